using System.CommandLine;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>What all commands that assess have in common.</summary>
internal sealed class CommonOptions
{
    private const string Several = "Several may be named, also of different folders.";
    private readonly Argument<string[]>? paths;

    /// <summary>The options of a command.</summary>
    /// <param name="severalPaths">Whether it takes several paths.</param>
    public CommonOptions(bool severalPaths = false)
    {
        if (severalPaths)
        {
            paths = new("path") { Description = $"{Path.Description} {Several}", Arity = ArgumentArity.OneOrMore };
        }
    }

    public Argument<string> Path { get; } =
        new("path")
        {
            Description =
                "A candle's or batch's .yaml file, or a folder of declarations for all of its candles and batches; - reads one from the standard input, as if it lay in the present folder.",
        };

    public Option<string?> Place { get; } =
        new("--place") { Description = "Answer for this place of sale only (country code), whether or not the candle lists it." };

    public Option<DateOnly> AsOf { get; } =
        new("--as-of")
        {
            Description = "The day whose law is applied, such as 2028-01-01. Default: today.",
            CustomParser = result => Day(result) ?? default,
            DefaultValueFactory = _ => DateOnly.FromDateTime(DateTime.Today),
        };

    public Option<string?> Data { get; } =
        new("--data") { Description = "A folder whose files are used instead of the program's own data (same layout as data/)." };

    /// <summary>Reads a day from the command line.</summary>
    public static DateOnly? Day(System.CommandLine.Parsing.ArgumentResult result)
    {
        Parsed<DateOnly> day = IsoDay.Parse(result.Tokens[0].Value);
        if (day.Success)
        {
            return day.Value;
        }

        result.AddError($"'{result.Tokens[0].Value}' is not a day: write year-month-day, such as 2028-01-01.");
        return null;
    }

    /// <summary>The paths that a command line names.</summary>
    public IReadOnlyList<string> PathsIn(ParseResult parse) => paths is null ? [parse.GetValue(Path)!] : parse.GetValue(paths)!;

    public void AddTo(Command command)
    {
        command.Add(paths as Argument ?? Path);
        command.Add(Place);
        command.Add(AsOf);
        command.Add(Data);
    }
}
