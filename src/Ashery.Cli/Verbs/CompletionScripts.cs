namespace Ashery.Cli.Verbs;

/// <summary>
/// The scripts hold no words of their own: each asks the program, so that a shell always offers what this version knows.
/// </summary>
internal static class CompletionScripts
{
    public static string For(string shell) => shell switch
    {
        "bash" => Bash,
        "zsh" => Zsh,
        _ => Fish,
    };

    private const string Bash =
        """
        # Completion of ashery for bash.
        _ashery() {
            local IFS=$'\n' word=${COMP_WORDS[COMP_CWORD]}
            # bash takes = and : for ends of words; what stands before the last one is already on the line.
            local whole=${COMP_LINE:0:COMP_POINT}
            whole=${whole##* }
            local before=${whole%"$word"}
            [[ $word == [=:] ]] && before=$whole
            COMPREPLY=($("$1" "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null))
            COMPREPLY=("${COMPREPLY[@]#"$before"}")
            [[ ${#COMPREPLY[@]} -eq 1 && ${COMPREPLY[0]} == *,* ]] && compopt -o nospace
            return 0
        }
        complete -F _ashery ashery ./run

        """;

    private const string Zsh =
        """
        #compdef ashery run
        # Completion of ashery for zsh.
        _ashery() {
            local -a words_found
            words_found=("${(@f)$("${words[1]}" "[suggest:$CURSOR]" "$BUFFER" 2>/dev/null)}")
            compadd -Q -- $words_found
        }
        compdef _ashery ashery ./run

        """;

    private const string Fish =
        """
        # Completion of ashery for fish.
        function __ashery_words
            set -l line (commandline -p)
            set -l program (commandline -po)[1]
            $program "[suggest:"(commandline -pC)"]" "$line" 2>/dev/null
        end
        complete -c ashery -f -a '(__ashery_words)'
        complete -c run -f -a '(__ashery_words)'

        """;
}
