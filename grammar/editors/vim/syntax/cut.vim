" Cuts, coloured line by line; the language server knows more.
if exists('b:current_syntax')
  finish
endif

" Of matches that begin at one place the last one here wins.
syntax match cutOperator /[-−–—=＝:：@＠>＞*＊(){}（）｛｝<＜,、]\|\.\.\|。。/
syntax match cutNumber /\<\d[0-9a-zA-Z]*\%([.+'\/%]\d\+\k*\|%\|\/f\)*/
syntax match cutNumber /[０-９]\+/
syntax match cutEmpty /\<x\>/
syntax match cutOption /\%(^\)\@1<!\<\%(about\|at\|carry\|ccw\|curve\|curved\|cw\|direct\|ease\|every\|fair\|flaps\|flash\|free\|from\|full\|graduated\|in\|lead\|level\|log\|loop\|masks\|mono\|off\|on\|out\|picture\|quick\|reuse\|sideways\|size\|steps\|white\|with\|left\|right\|up\|down\)\>/
syntax match cutStatement /^\%(cut\|time\|fps\|on\|mark\|stack\|level\|cels\|numbering\|use\|voice\|sound\|music\|track\|mouth\|note\|memo\|same\|scene\|take\|artist\|accept\|field\|fix\|pan\|truck\|pull\|follow\|slide\|turn\|shake\|sway\|fade\|wipe\|iris\|expose\|glow\|effect\|overlap\|phrase\)\>/
syntax match cutLevel /^\k\+\ze\s*\%("[^"]*"\s*\|「[^」]*」\s*\)\?[:：]/
syntax match cutEscape /\\./ contained
syntax match cutText /"\%([^"\\]\|\\.\)*"/ contains=cutEscape
syntax match cutText /「\%([^」\\]\|\\.\)*」/ contains=cutEscape
syntax match cutUnclosed /"\%([^"\\]\|\\.\)*$/
syntax match cutUnclosed /「\%([^」\\]\|\\.\)*$/
syntax match cutComment /[#＃].*/

highlight default link cutOperator Operator
highlight default link cutNumber Number
highlight default link cutEmpty Constant
highlight default link cutOption Type
highlight default link cutStatement Statement
highlight default link cutLevel Identifier
highlight default link cutText String
highlight default link cutEscape SpecialChar
highlight default link cutUnclosed Error
highlight default link cutComment Comment

let b:current_syntax = 'cut'
