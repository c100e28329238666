using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli;

/// <summary>
/// What a shell is offered at the cursor: commands, options, their values, and names from the data and the maker's folder, which are
/// read when they are asked for. What stands behind the cursor changes nothing, and what is offered begins with what is typed.
/// </summary>
internal static class Offers
{
    private const int MostFiles = 200;

    /// <summary>Lets the program answer a shell.</summary>
    public static void AddTo(RootCommand root)
    {
        SuggestDirective suggest = root.Directives.OfType<SuggestDirective>().Single();
        suggest.Action = new Answering(root, suggest);
    }

    /// <summary>What is offered.</summary>
    /// <param name="root">The commands.</param>
    /// <param name="typed">The line.</param>
    public static IReadOnlyList<string> For(RootCommand root, TypedLine typed)
    {
        // '--place=D' goes on as '--place D' does.
        string[] parts = typed.Partial.StartsWith("--", StringComparison.Ordinal) ? typed.Partial.Split('=', 2) : [typed.Partial];
        string before = parts.Length == 2 ? parts[0] + "=" : "";
        var line = new TypedLine(parts.Length == 2 ? [.. typed.Words, parts[0]] : typed.Words, parts[^1], typed.Rest);
        Teach(root, line);
        string whole = string.Concat(line.Words.Select(w => $"\"{w.Replace("\"", "", StringComparison.Ordinal)}\" "));
        ParseResult parsed = root.Parse(whole);
        if (parsed.UnmatchedTokens.Count > 0)
        {
            return [];
        }

        List<string> offered =
        [
            .. parsed
                .GetCompletions(whole.Length)
                .Select(c => c.InsertText ?? c.Label)
                .Where(o => o.StartsWith(line.Partial, StringComparison.Ordinal) && !IsOtherNameOfHelp(o))
                .Distinct(),
        ];

        // Options are asked for with their dash, or where nothing else can stand.
        List<string> others = [.. offered.Where(o => !o.StartsWith('-'))];
        return [.. (others.Count > 0 ? others : offered).Select(o => before + o)];
    }

    private static bool IsOtherNameOfHelp(string offer) => offer is "-?" or "-h" or "/?" or "/h";

    private static void Teach(Command command, TypedLine line)
    {
        foreach (Option option in command.Options)
        {
            if (ForOption(command.Name, option.Name, line) is { } names)
            {
                option.CompletionSources.Add(_ => names().Select(n => new CompletionItem(n)));
            }
        }

        foreach (Argument argument in command.Arguments)
        {
            if (ForArgument(argument.Name, line) is { } names)
            {
                argument.CompletionSources.Add(_ => names().Select(n => new CompletionItem(n)));
            }
        }

        foreach (Command below in command.Subcommands)
        {
            Teach(below, line);
        }
    }

    private static Func<IEnumerable<string>>? ForOption(string command, string name, TypedLine line) =>
        name switch
        {
            "--place" => Places,
            "--language" => () => Law()?.Languages.Codes ?? [],
            "--stock" => () => StockShelf.Names,
            "--design" => Designs,
            "--also" when command != "blend" => () => Declared(line, "candles").Select(c => c + "=1"),
            "--leftover-of" => () => Declared(line, "candles"),
            "--oil" or "--share" or "--also" => () => Declared(line, "oils"),
            "--trial" => () => Declared(line, "trials"),
            "--wax" => () => Declared(line, "waxes"),
            "--lot" => () => Declared(line, "lots"),
            "--batch" => () => Declared(line, "batches"),
            _ => null,
        };

    private static Func<IEnumerable<string>>? ForArgument(string name, TypedLine line) =>
        name switch
        {
            "language" => () => Law()?.Languages.Codes ?? [],
            "country" => Places,
            "path" or "paths" => () => Candles(line),
            _ => null,
        };

    private static Lawbook? Law() => ShippedLaw.Open(null, new Problems());

    private static IEnumerable<string> Places() => Law()?.Places.Select(p => p.Code.Text) ?? [];

    private static IEnumerable<string> Designs() =>
        ShippedFiles
            .Templates(null, new Problems())
            .Keys.Select(k => k.Split('/'))
            .Where(k => k is ["designs", _, ..])
            .Select(k => k[1])
            .Distinct()
            .Order(StringComparer.Ordinal);

    // Candles and batches below the folder that is being typed, but for those that are named already.
    private static IEnumerable<string> Candles(TypedLine line)
    {
        string folder = Path.GetDirectoryName(line.Partial) ?? "";
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 2,
            AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden,
        };
        string root = folder.Length == 0 ? "." : folder;
        return Directory.Exists(root)
            ? Directory
                .EnumerateFiles(root, "*.yaml", options)
                .Where(f => Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(f))) is "candles" or "batches")
                .Select(f => folder.Length == 0 ? Path.GetRelativePath(".", f) : f)
                .Where(f => !line.Words.Contains(f))
                .Take(MostFiles)
                .Order(StringComparer.Ordinal)
            : [];
    }

    // Names of declarations of the maker's folder that the line speaks of, before the cursor or behind it.
    private static IEnumerable<string> Declared(TypedLine line, string kind)
    {
        string? path = line.Words.Skip(1).Concat(line.Rest).FirstOrDefault(w => File.Exists(w) || Directory.Exists(w));
        string folder = Path.Combine(DeclarationFolder.RootOf(path ?? "."), kind);
        return Directory.Exists(folder)
            ? Directory
                .EnumerateFiles(folder, "*.yaml")
                .Select(f => Path.GetFileNameWithoutExtension(f))
                .Order(StringComparer.Ordinal)
                .Take(MostFiles)
            : [];
    }

    private sealed class Answering(RootCommand root, SuggestDirective suggest) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parse)
        {
            string line = parse.Tokens.LastOrDefault(t => t.Type != TokenType.Directive)?.Value ?? "";
            int cursor = parse.GetResult(suggest)?.Values is [var at] && int.TryParse(at, out int given) ? given : line.Length;
            if (TypedLine.IsBegun(line, cursor))
            {
                foreach (string offer in For(root, TypedLine.Read(line, cursor)))
                {
                    parse.InvocationConfiguration.Output.WriteLine(offer);
                }
            }

            return ExitCode.Fine;
        }
    }
}
