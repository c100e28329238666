using System.CommandLine;

namespace Chandlery.Cli;

/// <summary>An example of each command, with the demo's candles; a test runs them all, in this order.</summary>
internal static class Examples
{
    // Commands that have commands below them.
    private static readonly string[] Above = ["dispatches", "register", "ufi"];

    private static readonly string[] Lines =
    [
        "workbench data/demo",
        "assess data/demo/candles/harbour-bowl.yaml --place DE",
        "trace data/demo/candles/harbour-bowl.yaml load",
        "substance cinnamal --in data/demo",
        "label data/demo/candles/harbour-bowl.yaml --out out",
        "designs data/demo/candles/harbour-bowl.yaml --design strata --piece lid --out out",
        "sheet data/demo/candles/fig-tin.yaml --stock a4-3x4-circles-60 --copies 5 --out out",
        "arrange data/demo/candles/fig-tin.yaml",
        "measure out/harbour-bowl-label.pdf data/demo/candles/harbour-bowl.yaml",
        "card data/demo/candles/fig-tin.yaml --out out",
        "safety-sheet data/demo/candles/harbour-bowl.yaml --out out",
        "dossier data/demo/candles/fig-tin.yaml --out out/fig-tin",
        "technical-file data/demo/candles/slate-jar.yaml --out out",
        "procedure data/demo/candles/harbour-bowl.yaml --out out",
        "duties data/demo/candles/harbour-bowl.yaml",
        "listing data/demo/candles/harbour-bowl.yaml --language de --format html",
        "tests data/demo",
        "dispatches list data/demo",
        "dispatches forget my-candles --name \"A shop that closed\"",
        "recall data/demo --lot CS-1107",
        "incidents data/demo",
        "weighing data/demo",
        "packaging data/demo --year 2026",
        "sets data/demo",
        "ceiling data/demo/candles/harbour-bowl.yaml --oil cedar-smoke",
        "trials data/demo",
        "blend data/demo --trial orchard-pier --keep no-class",
        "ufi make IE 7654321QA 1",
        "ufi check Q300-D035-S005-G4Q3",
        "draft night-fig.pdf --out out/night-fig.yaml",
        "bench-sheet data/demo/candles/harbour-bowl.yaml --count 6 --out out",
        "wicks data/demo/candles/tide-bowl.yaml --out out",
        "stores data/demo",
        "cost data/demo/candles/tide-bowl.yaml",
        "catalogue data/demo",
        "changes data/demo --to-as-of 2028-01-01",
        "register add data/demo/batches/hb-2611.yaml --by \"Your Name\" --register out/register.sqlite",
        "register find out/register.sqlite --substance linalool",
        "register verify out/register.sqlite",
        "register rebuild out/register.sqlite",
        "register document out/register.sqlite 6e1a08075031 --out out/garden-bowl.yaml",
        "register backup out/register.sqlite out/copy.sqlite",
        "register move out/register.sqlite out/moved.sqlite",
        "export data/demo --out out/candles.csv",
        "import out/candles.csv --into out/again",
        "schemas --out out/schemas",
        "kinds",
        "statements hu",
        "new my-candles",
        "version --full",
        "completions bash",
        "manual --roff",
        "reference --law",
    ];

    /// <summary>Examples without the program's name, by command.</summary>
    public static IReadOnlyList<(string Command, string Line)> All { get; } = [.. Lines.Select(l => (CommandOf(l), l))];

    /// <summary>The example of a command; null where only its subcommands have some.</summary>
    public static string? Of(Command command)
    {
        string name = command.Name;
        for (Command? above = Parent(command); above is not null and not RootCommand; above = Parent(above))
        {
            name = $"{above.Name} {name}";
        }

        return All.FirstOrDefault(e => e.Command == name).Line is { } line ? "chandlery " + line : null;
    }

    private static string CommandOf(string line)
    {
        string[] words = line.Split(' ');
        return string.Join(' ', words.Take(Above.Contains(words[0]) ? 2 : 1));
    }

    private static Command? Parent(Command command) => command.Parents.OfType<Command>().FirstOrDefault();
}
