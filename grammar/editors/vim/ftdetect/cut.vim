autocmd BufNewFile,BufRead *.cut setfiletype cut
