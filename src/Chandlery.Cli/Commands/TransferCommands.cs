using System.CommandLine;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Schemas;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>export</c>, <c>import</c> and <c>schemas</c>: the way out of this program and into it.</summary>
internal static class TransferCommands
{
    public static Command BuildExport()
    {
        var options = new CommonOptions();
        var what = new Option<string>("--what")
        {
            Description = "candles (CSV), blends (CSV) or all (JSON of every assessment). Default: candles.",
            DefaultValueFactory = _ => "candles",
        };
        what.AcceptOnlyFromAmong("candles", "blends", "all");
        var output = new Option<string?>("--out") { Description = "File to write. Default: the terminal." };
        var command = new Command("export", "Candles or blends as CSV, or everything as JSON.");
        options.AddTo(command);
        command.Add(what);
        command.Add(output);
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    var problems = new Problems();
                    if (Folder.Open(parse.GetValue(options.Path)!, parse.GetValue(options.Data), problems) is not { } folder)
                    {
                        return session.Report(problems.Found);
                    }

                    IReadOnlyList<CatalogueEntry<Assessment>> entries = CatalogueRun.Assess(
                        folder.Declarations.Catalogue,
                        folder.Declarations.Asked,
                        folder.Lawbook,
                        parse.GetValue(options.AsOf),
                        parse.GetValue(options.Place),
                        a => a
                    );
                    FolderReport report = FolderReport.Of(folder.Declarations, [.. entries.SelectMany(e => e.Problems)]);
                    if (entries.Count == 0)
                    {
                        return session.Report(report.Bad);
                    }

                    string text = parse.GetValue(what) switch
                    {
                        "blends" => CandleTable.Blends(entries.SelectMany(e => e.Results)),
                        "all" => AssessmentJson.Write(entries.SelectMany(e => e.Results)),
                        _ => CandleTable.Candles(folder.Declarations.Asked.OfType<Candle>()),
                    };
                    if (parse.GetValue(what) == "candles")
                    {
                        foreach (Candle other in folder.Declarations.Asked.OfType<Candle>().Where(c => !CandleTable.Holds(c)))
                        {
                            session.Complain(
                                $"{other.Id}: left out, because the table has the columns of container candles; '--what all' has it."
                            );
                        }
                    }

                    if (parse.GetValue(output) is { } file)
                    {
                        AtomicFile.Write(file, text);
                        session.Output.WriteLine(file);
                    }
                    else
                    {
                        session.Output.Write(text);
                    }

                    return session.Close(report, ExitCode.Fine);
                }
            )
        );
        return command;
    }

    public static Command BuildImport()
    {
        var file = new Argument<string>("csv") { Description = "A CSV file with the columns that 'export --what candles' writes." };
        var into = new Option<string>("--into")
        {
            Description = "The maker's folder; the candles go into its folder 'candles'.",
            Required = true,
        };
        var command = new Command(
            "import",
            "Candle declarations from CSV. Nothing is overwritten, and nothing is written when a row is wrong."
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
        Core.Law.Lawbook? lawbook = ShippedLaw.Open(null, problems);
        IReadOnlyList<(string Id, string Yaml)> candles = TextFile.Read(file, file, problems) is { } csv
            ? CandleTable.Read(csv, file, problems)
            : [];
        foreach ((string id, string yaml) in candles)
        {
            string target = Path.Combine(into, "candles", id + ".yaml");
            if (File.Exists(target))
            {
                problems.Add(new TextPlace(target, 0, 0), "The file exists already.", "Rename the row, or move the file away.");
            }

            new DeclarationReader(lawbook!.Vocabulary).Read(yaml, target, id, problems);
        }

        if (!problems.None)
        {
            return session.Report(problems.Found);
        }

        foreach ((string id, string yaml) in candles)
        {
            string target = Path.Combine(into, "candles", id + ".yaml");
            AtomicFile.Write(target, yaml);
            session.Output.WriteLine(target);
        }

        return ExitCode.Fine;
    }

    public static Command BuildSchemas()
    {
        var output = new Option<string>("--out")
        {
            Description = "Folder to write into. Default: schemas.",
            DefaultValueFactory = _ => "schemas",
        };
        var command = new Command("schemas", "Write the JSON Schemas of declarations and assessments, for editors and other programs.")
        {
            output,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    foreach ((string name, string text) in JsonSchemas.All())
                    {
                        string path = Path.Combine(parse.GetValue(output)!, name);
                        AtomicFile.Write(path, text);
                        session.Output.WriteLine(path);
                    }

                    return ExitCode.Fine;
                }
            )
        );
        return command;
    }
}
