" Cuts: a statement starts at column 1 and goes on over indented lines.
if exists('b:did_ftplugin')
  finish
endif
let b:did_ftplugin = 1

setlocal comments=:# commentstring=#\ %s
setlocal expandtab autoindent nosmartindent nocindent
" gq lays a cut out as `cutwright format` does; :make lists what is wrong with it.
setlocal formatprg=cutwright\ format\ -
setlocal makeprg=cutwright\ check\ %:S
setlocal errorformat=%EError:\ %m,%WWarning:\ %m,%IHint:\ %m,%Z%f:%l:%c:\ %.%#,%-G%.%#

let b:undo_ftplugin = 'setlocal comments< commentstring< expandtab< autoindent< smartindent< cindent< formatprg< makeprg< errorformat<'
