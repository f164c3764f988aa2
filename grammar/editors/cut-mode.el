;;; cut-mode.el --- Cuts of hand-drawn animation  -*- lexical-binding: t; -*-

;; SPDX-License-Identifier: MIT
;; Package-Requires: ((emacs "27.1"))
;; Keywords: languages

;;; Commentary:

;; Colours, comments and indentation for .cut files, and `cutwright lsp'
;; for eglot.  A statement starts at column 1 and goes on over indented
;; lines: TAB moves a blank or an indented line under its statement, and
;; leaves a line that starts a statement where it is.

;;; Code:

(defvar eglot-server-programs)

(defconst cut-statements
  '("cut" "time" "fps" "on" "mark" "stack" "level" "cels" "numbering" "use" "voice" "sound"
    "music" "track" "mouth" "note" "memo" "same" "scene" "take" "artist" "accept" "field" "fix" "pan" "truck" "pull" "follow"
    "slide" "turn" "shake" "sway" "fade" "wipe" "iris" "expose" "glow" "effect" "overlap" "phrase")
  "The words that start a statement.")

(defconst cut-options
  '("about" "at" "carry" "ccw" "curve" "cw" "direct" "ease" "every" "fair" "flaps" "flash" "free" "from" "full" "in"
    "lead" "level" "log" "loop" "masks" "mono" "off" "on" "out" "picture" "quick" "reuse" "sideways" "size" "steps"
    "graduated" "curved" "white" "with" "left" "right" "up" "down")
  "The words that may stand in a statement.")

(defconst cut--heading
  (rx bol (group (any alpha) (* (any alnum "_"))) (* blank)
      (? (or (seq ?\" (* (not (any ?\" ?\n))) ?\") (seq "「" (* (not (any "」\n"))) "」"))
         (* blank))
      (any ":：") (* blank))
  "The name of a level and what stands before its drawings.")

(defconst cut-font-lock-keywords
  `((,cut--heading 1 font-lock-variable-name-face)
    (,(concat "^" (regexp-opt cut-statements 'symbols)) . font-lock-keyword-face)
    (,(concat "[ \t　]" (regexp-opt cut-options 'symbols)) 1 font-lock-type-face)
    (,(rx symbol-start "x" symbol-end) . font-lock-constant-face)
    (,(rx symbol-start (any digit) (* (any alnum)) (* (any ".+'/") (any digit) (* (any alnum)))
          (? (or "%" "/f")))
     . font-lock-constant-face))
  "What is coloured in `cut-mode'.")

(defvar cut-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?# "<" table)
    (modify-syntax-entry ?＃ "<" table)
    (modify-syntax-entry ?\n ">" table)
    (modify-syntax-entry ?_ "_" table)
    ;; Quotes open a text only where one closes it on the same line.
    (modify-syntax-entry ?\" "." table)
    (modify-syntax-entry ?「 "." table)
    (modify-syntax-entry ?」 "." table)
    (dolist (sign '(?- ?+ ?* ?/ ?% ?= ?< ?> ?@ ?: ?. ?, ?'))
      (modify-syntax-entry sign "." table))
    table)
  "The syntax table of `cut-mode'.")

(defconst cut--syntax-propertize
  (syntax-propertize-rules
   ("\\(\"\\)\\(?:[^\"\\\n]\\|\\\\.\\)*\\(\"\\)" (1 "|") (2 "|"))
   ("\\(「\\)\\(?:[^」\\\n]\\|\\\\.\\)*\\(」\\)" (1 "|") (2 "|"))))

(defun cut--column ()
  "The column under which the statement before point goes on."
  (save-excursion
    (if (not (re-search-backward "^[^ \t\n#＃　]" nil t))
        0
      (if (looking-at cut--heading)
          (progn (goto-char (match-end 0)) (current-column))
        4))))

(defun cut-indent-line ()
  "Put this line under its statement, unless it starts one."
  (interactive)
  (if (save-excursion (beginning-of-line) (looking-at "[^ \t\n　]"))
      'noindent
    (let ((column (save-excursion (beginning-of-line) (cut--column))))
      (if (<= (current-column) (current-indentation))
          (indent-line-to column)
        (save-excursion (indent-line-to column))))))

;;;###autoload
(define-derived-mode cut-mode prog-mode "Cut"
  "Major mode for cuts of hand-drawn animation."
  (setq-local comment-start "# ")
  (setq-local comment-end "")
  (setq-local comment-start-skip "[#＃]+[ \t　]*")
  (setq-local indent-tabs-mode nil)
  (setq-local indent-line-function #'cut-indent-line)
  (setq-local syntax-propertize-function cut--syntax-propertize)
  (setq-local font-lock-defaults '(cut-font-lock-keywords))
  ;; A new line starts a new statement.
  (electric-indent-local-mode -1))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.cut\\'" . cut-mode))

(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs '(cut-mode . ("cutwright" "lsp"))))

(provide 'cut-mode)
;;; cut-mode.el ends here
