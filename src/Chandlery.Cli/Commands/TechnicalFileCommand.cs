using System.CommandLine;
using System.Text.Json;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.TechnicalFiles;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery technical-file</c>: one document a candle and version.</summary>
internal static class TechnicalFileCommand
{
    public static Command Build(PaperList papers)
    {
        var options = new CommonOptions(severalPaths: true);
        var paper = new PaperOptions();
        paper.Purpose.DefaultValueFactory = _ => PdfPurpose.Archive;
        paper.Purpose.Description =
            "What the PDF is for: archive (default; made after the rules of PDF/A-3, declarations and assessment inside), people, press.";
        var version = new Option<int>("--file-version")
        {
            Description = "Number of the file's version, from 2 on in its name too. Default: 1.",
            CustomParser = Numbers.Whole("--file-version", 1, 9999),
            DefaultValueFactory = _ => PaperSettings.FirstRevision,
        };
        var since = new Option<string?>("--since")
        {
            Description =
                "What it is compared with: an earlier technical file (its PDF for the archive), or a folder with the declarations of then. Default: the candle's last entry in the register.",
        };
        since.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<string?>() is { } named && !File.Exists(named) && !Directory.Exists(named))
            {
                result.AddError($"--since: there is no file or folder '{named}'.");
            }
        });
        var command = new Command(
            "technical-file",
            "Write the technical file of a candle: description, composition, risks, standards, burn tests, classification with its working, label and its drawing, batches, what is missing, what has changed since the last version, how long it is kept."
        );
        options.AddTo(command);
        paper.AddTo(command);
        command.Add(version);
        Option<bool> json = JsonOption.BesidePapers(command.Name);
        command.Add(since);
        command.Add(json);
        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    var settings = new PaperSettings(Revision: parse.GetValue(version)) { Since = parse.GetValue(since) };
                    if (parse.GetValue(json))
                    {
                        TechnicalFileReport[] reports =
                        [
                            .. assessments.Select(a =>
                                TechnicalFilePaper.Report(session.Request(a, a.Languages[0], printer.Shop, settings))
                            ),
                        ];
                        session.Output.WriteLine(JsonSerializer.Serialize(reports, SafetyFileJson.Plain.TechnicalFileReportArray));
                    }

                    if (!paper.IsWanted(parse))
                    {
                        return ExitCode.Fine;
                    }

                    var run = new PaperRun(session, printer, assessments, settings);
                    run.MakeAll([.. papers.All.OfType<TechnicalFilePaper>()]);
                    return run.Finish();
                }
            )
        );
        return command;
    }
}
