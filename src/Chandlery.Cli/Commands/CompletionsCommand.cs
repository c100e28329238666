using System.CommandLine;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery completions</c>: what a shell needs to complete commands and options.</summary>
internal static class CompletionsCommand
{
    private const string Bash = """
        # bash: add  eval "$(chandlery completions bash)"  to ~/.bashrc
        _chandlery() {
          local found word="${COMP_WORDS[COMP_CWORD]}"
          COMPREPLY=()
          while IFS= read -r found; do
            # Where '=' parts words, what stands before it is kept already.
            [[ $found == --*=* && $COMP_WORDBREAKS == *=* ]] && found="${found#*=}"
            case "$word" in
              [\"\']*) ;;
              *) printf -v found '%q' "$found" ;;
            esac
            COMPREPLY+=("$found")
          done < <(chandlery "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)
        }
        complete -o default -F _chandlery chandlery
        """;

    private const string Zsh = """
        # zsh: add  eval "$(chandlery completions zsh)"  to ~/.zshrc, after compinit
        _chandlery() {
          local -a found
          local line="${(j: :)words[1,CURRENT-1]} ${PREFIX}"
          found=(${(f)"$(chandlery "[suggest:${#line}]" "$line" 2>/dev/null)"})
          if (( ${#found} )); then compadd -a found; else _files; fi
        }
        compdef _chandlery chandlery
        """;

    private const string Fish = """
        # fish: chandlery completions fish > ~/.config/fish/completions/chandlery.fish
        complete -c chandlery -a '(chandlery "[suggest:"(string length (commandline -cp))"]" (commandline -cp) 2>/dev/null)'
        """;

    private const string PowerShell = """
        # PowerShell: add  chandlery completions pwsh | Out-String | Invoke-Expression  to $PROFILE
        Register-ArgumentCompleter -Native -CommandName chandlery -ScriptBlock {
          param($word, $line, $position)
          $at = $position - $line.Extent.StartOffset
          chandlery "[suggest:$at]" "$line" | ForEach-Object {
            [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
          }
        }
        """;

    public static Command Build()
    {
        var shell = new Argument<string>("shell") { Description = "bash, zsh, fish or pwsh." };
        shell.AcceptOnlyFromAmong("bash", "zsh", "fish", "pwsh");
        var command = new Command("completions", "Print the script that makes a shell complete commands and options.") { shell };
        command.SetAction(parse =>
            parse.InvocationConfiguration.Output.WriteLine(
                parse.GetValue(shell) switch
                {
                    "bash" => Bash,
                    "zsh" => Zsh,
                    "fish" => Fish,
                    _ => PowerShell,
                }
            )
        );
        return command;
    }
}
