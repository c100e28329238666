using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Invocation;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli;

/// <summary>What the shell offers beyond commands and options: names from the data and the maker's folder, read when they are asked for.</summary>
internal static class Offers
{
    private const int MostFiles = 200;

    /// <summary>Lets the program learn the names once the shell asks; what else it does, help too, then reads no folder and no law.</summary>
    public static void AddTo(RootCommand root)
    {
        SuggestDirective suggest = root.Directives.OfType<SuggestDirective>().Single();
        suggest.Action = new Answering(root, (SynchronousCommandLineAction)suggest.Action!);
    }

    private static void Teach(Command command)
    {
        foreach (Option option in command.Options)
        {
            if (ForOption(option.Name) is { } names)
            {
                option.CompletionSources.Add(names);
            }
        }

        foreach (Argument argument in command.Arguments)
        {
            if (ForArgument(argument.Name) is { } names)
            {
                argument.CompletionSources.Add(names);
            }
        }

        foreach (Command below in command.Subcommands)
        {
            Teach(below);
        }
    }

    private static Func<CompletionContext, IEnumerable<string>>? ForOption(string name) =>
        name switch
        {
            "--place" => _ => Law()?.Places.Select(p => p.Code.Text) ?? [],
            "--language" => _ => Law()?.Languages.Codes ?? [],
            "--stock" => _ => StockShelf.Names,
            "--design" => _ => Designs(),
            "--oil" or "--share" or "--also" => context => Declared(context, "oils"),
            "--trial" => context => Declared(context, "trials"),
            "--wax" => context => Declared(context, "waxes"),
            _ => null,
        };

    private static Func<CompletionContext, IEnumerable<string>>? ForArgument(string name) =>
        name switch
        {
            "language" => _ => Law()?.Languages.Codes ?? [],
            "path" or "paths" => Candles,
            _ => null,
        };

    private static Lawbook? Law() => ShippedLaw.Open(null, new Problems());

    private static IEnumerable<string> Designs() =>
        ShippedFiles
            .Templates(null, new Problems())
            .Keys.Select(k => k.Split('/'))
            .Where(k => k is ["designs", _, ..])
            .Select(k => k[1])
            .Distinct()
            .Order(StringComparer.Ordinal);

    // Candles and batches below the folder that is being typed.
    private static IEnumerable<string> Candles(CompletionContext context)
    {
        string folder = Path.GetDirectoryName(context.WordToComplete) ?? "";
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
                .Where(f => Path.GetFileName(Path.GetDirectoryName(f)) is "candles" or "batches")
                .Take(MostFiles)
                .Select(f => folder.Length == 0 ? Path.GetRelativePath(".", f) : f)
                .Order(StringComparer.Ordinal)
            : [];
    }

    // Names of declarations of the maker's folder that the command line speaks of.
    private static IEnumerable<string> Declared(CompletionContext context, string kind)
    {
        string? path = context
            .ParseResult.CommandResult.Command.Arguments.Select(a =>
                context.ParseResult.GetResult(a) is { Tokens: [var token, ..] } ? token.Value : null
            )
            .FirstOrDefault(p => p is not null);
        string folder = Path.Combine(DeclarationFolder.RootOf(path ?? "."), kind);
        return Directory.Exists(folder)
            ? Directory
                .EnumerateFiles(folder, "*.yaml")
                .Select(f => Path.GetFileNameWithoutExtension(f))
                .Order(StringComparer.Ordinal)
                .Take(MostFiles)
            : [];
    }

    private sealed class Answering(RootCommand root, SynchronousCommandLineAction answer) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parse)
        {
            Teach(root);
            return answer.Invoke(parse);
        }
    }
}
