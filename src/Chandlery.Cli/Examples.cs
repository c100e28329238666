using System.CommandLine;

namespace Chandlery.Cli;

/// <summary>An example of each command, with the demo's candles; a test runs them all, in this order.</summary>
internal static class Examples
{
    /// <summary>Examples without the program's name, by command.</summary>
    public static IReadOnlyList<(string Command, string Line)> All { get; } =
    [
        ("workbench", "workbench data/demo"),
        ("assess", "assess data/demo/candles/harbour-bowl.yaml --place DE"),
        ("trace", "trace data/demo/candles/harbour-bowl.yaml load"),
        ("substance", "substance cinnamal --in data/demo"),
        ("label", "label data/demo/candles/harbour-bowl.yaml --out out"),
        ("designs", "designs data/demo/candles/harbour-bowl.yaml --design strata --piece lid --out out"),
        ("sheet", "sheet data/demo/candles/fig-tin.yaml --stock a4-3x4-circles-60 --copies 5 --out out"),
        ("arrange", "arrange data/demo/candles/fig-tin.yaml"),
        ("measure", "measure out/harbour-bowl-label.pdf data/demo/candles/harbour-bowl.yaml"),
        ("card", "card data/demo/candles/fig-tin.yaml --out out"),
        ("safety-sheet", "safety-sheet data/demo/candles/harbour-bowl.yaml --out out"),
        ("dossier", "dossier data/demo/candles/fig-tin.yaml --out out/fig-tin"),
        ("technical-file", "technical-file data/demo/candles/slate-jar.yaml --out out"),
        ("duties", "duties data/demo/candles/harbour-bowl.yaml"),
        ("listing", "listing data/demo/candles/harbour-bowl.yaml --language de --format html"),
        ("tests", "tests data/demo"),
        ("dispatches list", "dispatches list data/demo"),
        ("dispatches forget", "dispatches forget my-candles --name \"A shop that closed\""),
        ("recall", "recall data/demo --lot CS-1107"),
        ("incidents", "incidents data/demo"),
        ("weighing", "weighing data/demo"),
        ("packaging", "packaging data/demo --year 2026"),
        ("sets", "sets data/demo"),
        ("ceiling", "ceiling data/demo/candles/harbour-bowl.yaml --oil cedar-smoke"),
        ("trials", "trials data/demo"),
        ("blend", "blend data/demo --trial orchard-pier --keep no-class"),
        ("ufi make", "ufi make IE 7654321QA 1"),
        ("ufi check", "ufi check Q300-D035-S005-G4Q3"),
        ("draft", "draft night-fig.pdf --out out/night-fig.yaml"),
        ("bench-sheet", "bench-sheet data/demo/candles/harbour-bowl.yaml --count 6 --out out"),
        ("wicks", "wicks data/demo/candles/tide-bowl.yaml --out out"),
        ("stores", "stores data/demo"),
        ("cost", "cost data/demo/candles/tide-bowl.yaml"),
        ("catalogue", "catalogue data/demo"),
        ("changes", "changes data/demo --to-as-of 2028-01-01"),
        ("register add", "register add data/demo/batches/hb-2611.yaml --by \"Your Name\" --register out/register.sqlite"),
        ("register find", "register find out/register.sqlite --substance linalool"),
        ("register verify", "register verify out/register.sqlite"),
        ("register backup", "register backup out/register.sqlite out/copy.sqlite"),
        ("export", "export data/demo --out out/candles.csv"),
        ("import", "import out/candles.csv --into out/again"),
        ("schemas", "schemas --out out/schemas"),
        ("kinds", "kinds"),
        ("statements", "statements hu"),
        ("new", "new my-candles"),
        ("version", "version --full"),
        ("completions", "completions bash"),
        ("manual", "manual --roff"),
        ("reference", "reference --law"),
    ];

    /// <summary>The example of a command; null where only its subcommands have some.</summary>
    public static string? Of(Command command)
    {
        string name = command.Name;
        for (Command? above = Above(command); above is not null and not RootCommand; above = Above(above))
        {
            name = $"{above.Name} {name}";
        }

        return All.FirstOrDefault(e => e.Command == name).Line is { } line ? "chandlery " + line : null;
    }

    private static Command? Above(Command command) => command.Parents.OfType<Command>().FirstOrDefault();
}
