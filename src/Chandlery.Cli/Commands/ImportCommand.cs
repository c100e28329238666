using System.CommandLine;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery import</c>: the way into this program.</summary>
internal static class ImportCommand
{
    public static Command Build()
    {
        var file = new Argument<string>("csv")
        {
            Description =
                "A CSV file with the columns that 'export --what candles' writes, between commas, or between semicolons with decimal commas; - reads the standard input.",
        };
        var into = new Option<string>("--into")
        {
            Description = "The maker's folder; the candles go into its folder 'candles'.",
            Required = true,
        };
        var command = new Command(
            "import",
            "Declarations of candles and other products from CSV. Nothing is overwritten, and nothing is written when a row is wrong."
        )
        {
            file,
            into,
        };
        command.SetAction(parse => Session.Guard(parse, session => Import(session, parse.GetValue(file)!, parse.GetValue(into)!)));
        return command;
    }

    private static int Import(Session session, string file, string into)
    {
        var problems = new Problems();
        if (ShippedLaw.Open(null, problems) is not { } lawbook || StandardInput.ReadOr(file, problems) is not { } csv)
        {
            return session.Report(problems.Found);
        }

        List<(string Id, string Path, string Yaml)> candles =
        [
            .. CandleTable
                .Read(csv, StandardInput.NameOf(file), lawbook, problems)
                .Select(c => (c.Id, Path.Combine(into, "candles", c.Id + ".yaml"), c.Yaml)),
        ];
        IReadOnlyList<string> there = Directory.Exists(into) ? Names(into, lawbook) : [];
        foreach ((string id, string path, _) in candles)
        {
            if (File.Exists(path))
            {
                problems.Add(new TextPlace(path, 0, 0), "The file exists already.", "Rename the row, or move the file away.");
            }
            else if (there.Contains(id, StringComparer.OrdinalIgnoreCase))
            {
                problems.Add(
                    new TextPlace(into, 0, 0),
                    $"A candle '{id}' is declared there already.",
                    "Rename the row, or move the file away."
                );
            }
        }

        if (!problems.None)
        {
            return session.Report(problems.Found);
        }

        foreach ((_, string path, string yaml) in candles)
        {
            AtomicFile.Write(path, yaml);
            session.Output.WriteLine(path);
        }

        return ExitCode.Fine;
    }

    private static IReadOnlyList<string> Names(string folder, Lawbook lawbook) =>
        [.. DeclarationFolder.Open(folder, lawbook.Vocabulary).Catalogue.OfKind<Candle>().Select(c => c.Id)];
}
