# SPDX-License-Identifier: GPL-3.0-or-later
# Where `make install` puts what goes with the program: each thing where its reader looks for it. The
# program itself needs none of it: fonts and pages are inside, so it runs wherever it is moved to. The
# documentation keeps its folders, so that the links of README.md hold.
install(DIRECTORY docs/man/ DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES docs/completion/breakwater.bash RENAME breakwater
        DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions)
install(FILES docs/completion/_breakwater DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/site-functions)
install(FILES docs/completion/breakwater.fish
        DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)

install(FILES README.md LICENSE assets/fonts/B612-LICENCE.txt DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(DIRECTORY examples DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(DIRECTORY docs DESTINATION ${CMAKE_INSTALL_DOCDIR}
        PATTERN man EXCLUDE PATTERN completion EXCLUDE)
