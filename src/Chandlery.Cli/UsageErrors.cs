using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using Chandlery.Cli.Commands;
using Chandlery.Yaml;

namespace Chandlery.Cli;

/// <summary>What is wrong with a command line: a line for each mistake, with the nearest word, and where the help is.</summary>
internal static class UsageErrors
{
    /// <summary>Runs a command, or says what is wrong with how it was asked for.</summary>
    /// <returns>The exit code.</returns>
    public static int RunOrSay(ParseResult parse)
    {
        if (parse.Action is not ParseErrorAction)
        {
            int code = parse.Invoke(parse.InvocationConfiguration);

            // Whoever asks for the help of a command need not name what the command wants.
            return parse.Errors.Count > 0 && parse.Action is not PlainHelp ? ExitCode.BadInput : code;
        }

        string[] lines = [.. Lines(parse).Distinct()];
        lines[^1] += $" See '{Named(parse)} --help'.";
        TextWriter told = Session.Told(parse.InvocationConfiguration.Error);
        foreach (string line in lines)
        {
            told.WriteLine(Ink.Errors.Mind(TextTable.Harmless($"{Named(parse)}: {line}")));
        }

        return ExitCode.BadInput;
    }

    /// <summary>Refuses options that there are not where a command takes several words, which would be taken for one of them.</summary>
    public static void AddTo(Command command)
    {
        foreach (Argument argument in command.Arguments.Where(a => a.Arity.MaximumNumberOfValues > 1))
        {
            argument.Validators.Add(result =>
            {
                foreach (Token word in result.Tokens.Where(IsOption))
                {
                    result.AddError(Unknown(command, word.Value));
                }
            });
        }

        foreach (Command below in command.Subcommands)
        {
            AddTo(below);
        }
    }

    private static bool IsOption(Token word) => word.Value.Length > 1 && word.Value[0] == '-';

    private static IEnumerable<string> Lines(ParseResult parse)
    {
        // Of an unknown option nothing else need be said.
        if (Swallowed(parse) is { } option)
        {
            return [Unknown(parse.CommandResult.Command, option)];
        }

        // What follows an unknown word is most likely its value.
        if (parse.UnmatchedTokens.Count > 0)
        {
            return [Unknown(parse.CommandResult.Command, parse.UnmatchedTokens[0])];
        }

        return parse.Errors.Select(e => Line(e));
    }

    private static string? Swallowed(ParseResult parse) =>
        parse
            .CommandResult.Children.OfType<ArgumentResult>()
            .Where(a => a.Argument.Arity.MaximumNumberOfValues > 1)
            .SelectMany(a => a.Tokens)
            .FirstOrDefault(IsOption)
            ?.Value;

    private static string Unknown(Command command, string word)
    {
        if (word.StartsWith('-'))
        {
            return $"there is no option '{word}'.{Near(word, Options(command))}";
        }

        return command.Subcommands.Count > 0
            ? $"there is no command '{word}'.{Near(word, command.Subcommands.Select(c => c.Name))}"
            : $"'{word}' is one word too many.";
    }

    private static IEnumerable<string> Options(Command command) =>
        command
            .Options.Concat(command.Parents.OfType<Command>().SelectMany(c => c.Options.Where(o => o.Recursive)))
            .Where(o => !o.Hidden)
            .Select(o => o.Name);

    private static string Line(ParseError error) =>
        error.SymbolResult switch
        {
            ArgumentResult { Tokens.Count: 0, Argument: var argument } result when result.Parent is CommandResult =>
                $"<{argument.Name}> is missing. {argument.Description}",
            ArgumentResult { Tokens: [var token, ..], Parent: OptionResult option } when IsTypeName(error) =>
                $"'{token.Value}' is nothing that '{option.Option.Name}' takes. {option.Option.Description}",
            OptionResult { Tokens.Count: 0, Option: var option } => $"'{option.Name}' needs a value. {option.Description}",
            OptionResult { Tokens: [var token, ..], Option: var option } when IsTypeName(error) =>
                $"'{token.Value}' is nothing that '{option.Name}' takes. {option.Description}",
            OptionResult { Tokens: [var token, ..], Option: var option } when Words(option) is { Count: > 0 } words && IsList(error) =>
                $"'{token.Value}' is nothing that '{option.Name}' takes: {string.Join(", ", words)}.{Near(token.Value, words)}",
            ArgumentResult { Tokens: [var token, ..], Argument: var argument }
                when Words(argument) is { Count: > 0 } words && IsList(error) =>
                $"'{token.Value}' is nothing that <{argument.Name}> takes: {string.Join(", ", words)}.{Near(token.Value, words)}",
            CommandResult { Command: { Subcommands: { Count: > 0 } below } } =>
                $"one more word is needed: {string.Join(", ", below.Select(c => c.Name))}.",
            _ => string.Join(' ', error.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)),
        };

    // The library's own words name a type of the program.
    private static bool IsTypeName(ParseError error) => error.Message.Contains("expected type", StringComparison.Ordinal);

    private static bool IsList(ParseError error) => error.Message.Contains('\n', StringComparison.Ordinal);

    private static List<string> Words(Symbol symbol) => [.. symbol.GetCompletions(CompletionContext.Empty).Select(c => c.Label)];

    private static string Near(string word, IEnumerable<string> known) =>
        Suggestion.Nearest(word, known) is { } near ? $" Did you mean '{near}'?" : "";

    private static string Named(ParseResult parse)
    {
        var names = new Stack<string>();
        for (SymbolResult? at = parse.CommandResult; at is CommandResult { Command: not RootCommand } command; at = at.Parent)
        {
            names.Push(command.Command.Name);
        }

        return string.Join(' ', names.Prepend("chandlery"));
    }
}
