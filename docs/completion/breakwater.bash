# bash completion for breakwater, made by: breakwater help --completion bash
# The names of a kind in the first word of the line that is a scheme's file.
_breakwater_names() {
    local word
    for word in "${COMP_WORDS[@]:2}"; do
        [ -f "$word" ] || continue
        "${COMP_WORDS[0]}" help --names "$1" -- "$word" 2>/dev/null && return
    done
}
_breakwater() {
    local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD-1]}
    local verb=${COMP_WORDS[1]} words= files= value=1
    COMPREPLY=()
    if [ "$COMP_CWORD" -eq 1 ]; then
        COMPREPLY=($(compgen -W 'new check where draw test tune teach rehearse team log review board help --help --version' -- "$current"))
        return
    fi
    case $verb:$previous in
        new:--shape) words='1-2 2-2 2-1-2 match-up' ;;
        new:--level) words='youth-u11 youth-u13 youth-u15 high-school college' ;;
        new:--field) words='boys-nfhs boys-nfhs-unified men-ncaa men-wl women sixes youth-small' ;;
        new:--name) return ;;
        new:--output|new:-o) files=1 ;;
        new:--units) words='yd m' ;;
        check:--output|check:-o) files=1 ;;
        check:--units) words='yd m' ;;
        where:--stage) words=$(_breakwater_names stages) ;;
        where:--ball) words=$(_breakwater_names landmarks) ;;
        where:--attackers) return ;;
        where:--set) words=$(_breakwater_names sets) ;;
        where:--men) return ;;
        where:--output|where:-o) files=1 ;;
        where:--units) words='yd m' ;;
        draw:--stage) words=$(_breakwater_names stages) ;;
        draw:--ball) words=$(_breakwater_names landmarks) ;;
        draw:--attackers) return ;;
        draw:--set) words=$(_breakwater_names sets) ;;
        draw:--men) return ;;
        draw:--offence) return ;;
        draw:--defence) return ;;
        draw:--start) words=$(_breakwater_names landmarks) ;;
        draw:--late) return ;;
        draw:--seconds) return ;;
        draw:--level) words='youth-u11 youth-u13 youth-u15 high-school college' ;;
        draw:--seed) return ;;
        draw:--film) words=$(_breakwater_names lessons) ;;
        draw:--width) return ;;
        draw:--paper) words='letter a4' ;;
        draw:--theme) words='chart sun dark mono' ;;
        draw:--lines) words='run-solid pass-solid' ;;
        draw:--format) words='pdf svg png' ;;
        draw:--dpi) return ;;
        draw:--output|draw:-o) files=1 ;;
        draw:--units) words='yd m' ;;
        test:--set) words=$(_breakwater_names sets) ;;
        test:--offence) return ;;
        test:--defence) return ;;
        test:--start) words=$(_breakwater_names landmarks) ;;
        test:--late) return ;;
        test:--seconds) return ;;
        test:--level) words='youth-u11 youth-u13 youth-u15 high-school college' ;;
        test:--seed) return ;;
        test:--team) files=1 ;;
        test:--paper) words='letter a4' ;;
        test:--theme) words='chart sun dark mono' ;;
        test:--lines) words='run-solid pass-solid' ;;
        test:--format) words='pdf svg png' ;;
        test:--dpi) return ;;
        test:--output|test:-o) files=1 ;;
        test:--units) words='yd m' ;;
        tune:--stage) words=$(_breakwater_names stages) ;;
        tune:--keep) return ;;
        tune:--within) return ;;
        tune:--spacing) return ;;
        tune:--mix) return ;;
        tune:--practice) return ;;
        tune:--tries) return ;;
        tune:--breaks) return ;;
        tune:--seed) return ;;
        tune:--team) files=1 ;;
        tune:--resume) files=1 ;;
        tune:--sheets) files=1 ;;
        tune:--paper) words='letter a4' ;;
        tune:--output|tune:-o) files=1 ;;
        tune:--units) words='yd m' ;;
        teach:--only) words='packet handout cards quiz wall films' ;;
        teach:--spot) words=$(_breakwater_names spots) ;;
        teach:--paper) words='letter a4' ;;
        teach:--theme) words='chart sun dark mono' ;;
        teach:--lines) words='run-solid pass-solid' ;;
        teach:--card) return ;;
        teach:--seed) return ;;
        teach:--output|teach:-o) files=1 ;;
        teach:--units) words='yd m' ;;
        rehearse:--stage) words=$(_breakwater_names stages) ;;
        rehearse:--players) return ;;
        rehearse:--minutes) return ;;
        rehearse:--goals) return ;;
        rehearse:--numbers) return ;;
        rehearse:--paper) words='letter a4' ;;
        rehearse:--theme) words='chart sun dark mono' ;;
        rehearse:--lines) words='run-solid pass-solid' ;;
        rehearse:--format) words='pdf svg png' ;;
        rehearse:--dpi) return ;;
        rehearse:--output|rehearse:-o) files=1 ;;
        rehearse:--units) words='yd m' ;;
        team:--name) return ;;
        team:--initials) return ;;
        team:--spots) return ;;
        team:--fixed) return ;;
        team:--date) return ;;
        team:--clock) words='move signal gate' ;;
        team:--field) return ;;
        team:--note) return ;;
        team:--revision) return ;;
        team:--stage) return ;;
        team:--by) words='margin worth' ;;
        team:--apply) words='on off' ;;
        team:--sheet) words='roster splits breaks' ;;
        team:--seen) return ;;
        team:--strike) return ;;
        team:--leave) return ;;
        team:--output|team:-o) files=1 ;;
        team:--units) words='yd m' ;;
        log:--seconds) return ;;
        log:--passes) return ;;
        log:--shot) return ;;
        log:--out) return ;;
        log:--stage) return ;;
        log:--revision) return ;;
        log:--game) return ;;
        log:--against) return ;;
        log:--date) return ;;
        log:--time) return ;;
        log:--note) return ;;
        log:--id) return ;;
        log:--last) return ;;
        log:--output|log:-o) files=1 ;;
        log:--units) words='yd m' ;;
        review:--before) return ;;
        review:--after) return ;;
        review:--paper) words='letter a4' ;;
        review:--theme) words='chart sun dark mono' ;;
        review:--lines) words='run-solid pass-solid' ;;
        review:--format) words='pdf svg png' ;;
        review:--dpi) return ;;
        review:--output|review:-o) files=1 ;;
        review:--units) words='yd m' ;;
        board:--team) files=1 ;;
        board:--port) return ;;
        board:--minutes) return ;;
        board:--host) return ;;
        board:--address) return ;;
        board:--save) files=1 ;;
        board:--output|board:-o) files=1 ;;
        board:--units) words='yd m' ;;
        help:--completion) words='bash zsh fish' ;;
        help:--names) words='landmarks stages sets lessons spots' ;;
        help:--output|help:-o) files=1 ;;
        help:--units) words='yd m' ;;
        *)
            files=1 value=
            case $verb in
                new) words='--shape --level --field --name --force --json --output --units --no-color --help --version' ;;
                check) words='--json --output --units --no-color --help --version' ;;
                where) words='--stage --ball --attackers --set --men --json --output --units --no-color --help --version' ;;
                draw) words='--stage --ball --attackers --set --men --danger --answer --offence --defence --start --late --seconds --level --seed --film --width --paper --theme --lines --format --dpi --json --output --units --no-color --help --version' ;;
                test) words='--set --offence --defence --start --late --seconds --level --seed --team --quick --paper --theme --lines --format --dpi --json --output --units --no-color --help --version' ;;
                tune) words='--stage --keep --within --spacing --mix --practice --tries --breaks --seed --team --resume --sheets --paper --json --output --units --no-color --help --version' ;;
                teach) words='--only --spot --paper --theme --lines --card --large --gif --seed --json --output --units --no-color --help --version' ;;
                rehearse) words='--stage --players --minutes --goals --numbers --plain --paper --theme --lines --format --dpi --json --output --units --no-color --help --version' ;;
                team) words='--name --initials --spots --fixed --date --clock --field --note --revision --stage --by --apply --sheet --keep-odd --list --seen --strike --leave --force --json --output --units --no-color --help --version' ;;
                log) words='--seconds --passes --shot --out --stage --revision --game --against --date --time --note --id --keep-odd --last --json --output --units --no-color --help --version' ;;
                review) words='--before --after --no-model --paper --theme --lines --format --dpi --json --output --units --no-color --help --version' ;;
                board) words='--team --port --share --minutes --host --address --save --json --output --units --no-color --help --version' ;;
                help) words='--markdown --man --completion --names --json --output --units --no-color --help --version' ;;
            esac ;;
    esac
    [ -n "$value" ] || case $current:$verb:$COMP_CWORD in
        -*) files= ;;
        *:help:*) words="$words new check where draw test tune teach rehearse team log review board help" files= ;;
        *:team:2) words='new show set player split game scheme quiz legs lineup feedback import export backup restore check forget scrub' files= ;;
        *:log:3) words='add list edit undo remove import export' files= ;;
        *:log:*) case ${COMP_WORDS[3]} in add|edit) words='goal save wide forced unforced ground-ball matched-up whistle' files= ;; esac ;;
    esac
    COMPREPLY=($(compgen -W "$words" -- "$current"))
    [ -z "$files" ] || COMPREPLY+=($(compgen -f -- "$current"))
}
complete -o filenames -F _breakwater breakwater
