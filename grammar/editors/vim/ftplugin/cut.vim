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

" In Neovim the server completes.
if !has('nvim')
  setlocal omnifunc=CutOmni
endif

" Without a server: at the start of a line the words of statements, elsewhere the words inside them and the names of this text.
function! CutOmni(findstart, base)
  if a:findstart
    return match(strpart(getline('.'), 0, col('.') - 1), '\k*$')
  endif
  let words = s:WordsOf(strpart(getline('.'), 0, col('.') - 1) =~# '^\k*$' ? 'cutStatement' : 'cutOption')
  for line in getline(1, '$')
    let name = matchstr(line, '\v^%((phrase|field|mark|level)\s+)?\zs\k+\ze%(\s+"[^"]*")?\s*[:=]|^%(field|mark|level)\s+\zs\k+')
    call extend(words, empty(name) ? [] : [name])
  endfor
  return filter(uniq(sort(words)), 'stridx(v:val, a:base) == 0')
endfunction

" The words of a syntax group, out of its pattern.
function! s:WordsOf(group) abort
  let pattern = matchstr(execute('syntax list ' . a:group), '\\%(\zs[a-z\\|]\+\ze\\)\\>')
  return split(pattern, '\\|')
endfunction

let b:undo_ftplugin = 'setlocal comments< commentstring< expandtab< autoindent< smartindent< cindent< formatprg< makeprg< errorformat< omnifunc<'
