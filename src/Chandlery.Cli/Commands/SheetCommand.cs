using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.LabelSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery sheet</c>: labels on sheets, or for a roll.</summary>
internal static class SheetCommand
{
    private const double FarthestOffsetMm = 1000;
    private const int MostCopies = 10_000;
    private const int HighestNumber = 999_999_999 - MostCopies;

    public static Command Build()
    {
        var options = new CommonOptions(severalPaths: true);
        var stock = new Option<string>("--stock")
        {
            Description = $"Label stock: {string.Join(", ", StockShelf.Names)}; or a file with 'declares: stock'.",
            Required = true,
        };
        var start = new Option<int>("--start")
        {
            Description = "First free label on the sheet, from 1. Default: 1.",
            CustomParser = Numbers.Whole("--start", int.MinValue, int.MaxValue),
            DefaultValueFactory = _ => 1,
        };
        var copies = new Option<int>("--copies")
        {
            Description = "Labels of each candle. Default: 1.",
            CustomParser = Numbers.Whole("--copies", int.MinValue, int.MaxValue),
            DefaultValueFactory = _ => 1,
        };
        var crop = new Option<bool>("--crop-marks") { Description = "Draw crop marks." };
        var duplex = new Option<bool>("--duplex")
        {
            Description =
                "Print fronts and backs of labels that have both ('as: pair') on two sides of a sheet that is turned over its long edge.",
        };
        var offsetX = new Option<double>("--offset-x")
        {
            Description = "Correct the printer to the right, millimetres (negative: to the left).",
            CustomParser = Numbers.Decimal("--offset-x", -FarthestOffsetMm, FarthestOffsetMm),
        };
        var offsetY = new Option<double>("--offset-y")
        {
            Description = "Correct the printer downwards, millimetres.",
            CustomParser = Numbers.Decimal("--offset-y", -FarthestOffsetMm, FarthestOffsetMm),
        };
        var calibrate = new Option<bool>("--calibrate")
        {
            Description = "Print the stock's outlines instead of labels, to find the printer's offset.",
        };
        var numberFrom = new Option<int?>("--number-from")
        {
            Description =
                "Print a running number on each label, beginning with this one for each candle: behind the batch code, or where the legal panel is free.",
            CustomParser = result => Numbers.Whole("--number-from", 0, HighestNumber)(result),
        };
        var pdf = new Option<bool>("--pdf")
        {
            Description = "Print a roll as PDF, a page of the label's size for each label, for printers that take PDF.",
        };
        var paper = new PaperOptions();
        var command = new Command(
            "sheet",
            "Print labels of one or several candles, also of several paths, on the same sheets (PDF), or for a roll (one-bit PNG at exact dots, or PDF)."
        );
        options.AddTo(command);
        foreach (
            Option option in new Option[]
            {
                stock,
                start,
                copies,
                crop,
                duplex,
                offsetX,
                offsetY,
                calibrate,
                numberFrom,
                pdf,
                paper.Out,
                paper.Purpose,
                paper.Templates,
            }
        )
        {
            command.Add(option);
        }

        command.SetAction(parse =>
            Session.Print(
                parse,
                options,
                paper,
                (session, printer, assessments) =>
                {
                    var problems = new Problems();
                    if (StockShelf.Find(parse.GetValue(stock)!, problems) is not { } chosen)
                    {
                        return session.Report(problems.Found);
                    }

                    var settings = new SheetOptions(
                        parse.GetValue(start),
                        parse.GetValue(crop),
                        new Millimetres(parse.GetValue(offsetX)),
                        new Millimetres(parse.GetValue(offsetY))
                    )
                    {
                        IsDuplex = parse.GetValue(duplex),
                    };
                    int number = parse.GetValue(copies);
                    if (settings.Start < 1 || settings.Start > (chosen.Sheet?.Count ?? 1) || number is < 1 or > MostCopies)
                    {
                        session.Complain(
                            $"--start must lie between 1 and {chosen.Sheet?.Count ?? 1}, --copies between 1 and {MostCopies}."
                        );
                        return ExitCode.BadInput;
                    }

                    if (parse.GetValue(calibrate))
                    {
                        return Calibrate(session, printer, chosen, settings);
                    }

                    var run = new LabelRun(number, parse.GetValue(numberFrom), parse.GetValue(pdf));
                    return Print(session, printer, assessments, chosen, settings, run);
                }
            )
        );
        return command;
    }

    private static int Calibrate(Session session, Printer printer, Stock stock, SheetOptions settings)
    {
        if (stock.Sheet is null)
        {
            session.Complain("A roll needs no calibration page: its labels are printed one by one.");
            return ExitCode.BadInput;
        }

        printer.Write(
            [new PendingFile($"calibration-{stock.Id}.pdf", printer.Pdf(SheetDocument.Calibration(stock, settings), session, []))],
            session
        );
        return ExitCode.Fine;
    }

    private static int Print(
        Session session,
        Printer printer,
        IReadOnlyList<Assessment> assessments,
        Stock stock,
        SheetOptions settings,
        LabelRun run
    )
    {
        var problems = new Problems();
        var labels = new List<(string Id, IReadOnlyList<IReadOnlyList<Scene>> Copies)>();
        var reasons = new List<string>();
        int made = 0;
        foreach (Assessment a in assessments)
        {
            session.Progress.Tell(made++, assessments.Count);
            switch (StockLabel.Make(session.Request(a, a.Languages[0], printer.Shop, new PaperSettings()), stock))
            {
                case MadePaper label:
                    if (run.Of(label, a.BatchCode) is { } copies)
                    {
                        labels.Add((a.Id, copies));
                        break;
                    }

                    reasons.Add($"{a.Id}: no label: it has no free place for a running number. A larger stock would have one.");
                    break;
                case MissingPaper missing:
                    problems.AddRange(missing.Problems);
                    reasons.Add($"{a.Id}: no label: {missing.Why}");
                    break;
            }
        }

        if (!problems.None && labels.Count == 0)
        {
            return session.Report(problems.Found);
        }

        if (settings.IsDuplex && labels.Find(l => l.Copies[0].Count != 2) is { Id: { } single })
        {
            session.Complain(
                $"{single}: its label has no back, so it cannot be printed on two sides. Write 'design: {{ as: pair }}' in the candle, or leave out --duplex."
            );
            return ExitCode.BadInput;
        }

        if (labels.Count > 0)
        {
            byte[] Pdf(PaperDocument sheets) => printer.Pdf(sheets, session, [.. assessments.Where(a => labels.Exists(l => l.Id == a.Id))]);
            printer.Write(Files(labels, stock, settings, run.AsPdf, assessments[0].Languages[0].Code, Pdf), session);
        }

        if (assessments.Select(a => StockLabel.Caution(a, stock)).FirstOrDefault(c => c is not null) is { } caution)
        {
            session.Complain(caution);
        }

        reasons.ForEach(session.Complain);
        return session.Close(new FolderReport(problems.Found, []), reasons.Count > 0 ? ExitCode.StopsSale : ExitCode.Fine);
    }

    private static IEnumerable<PendingFile> Files(
        List<(string Id, IReadOnlyList<IReadOnlyList<Scene>> Copies)> labels,
        Stock stock,
        SheetOptions settings,
        bool asPdf,
        string language,
        Func<PaperDocument, byte[]> pdf
    )
    {
        // A thermal printer makes copies of the same dots itself.
        bool isOfDots = stock.RollDotsPerInch is not null && !asPdf;
        List<(string Id, Scene Page)> pages =
        [
            .. labels.SelectMany(l => (isOfDots ? l.Copies.Distinct() : l.Copies).SelectMany(c => c.Select(page => (l.Id, page)))),
        ];
        if (stock.RollDotsPerInch is { } dots)
        {
            return isOfDots
                ? pages.Select((p, i) => new PendingFile($"{stock.Id}-{i + 1}-{p.Id}.png", ThermalDrawing.Draw(p.Page, dots)))
                : [new PendingFile($"{stock.Id}.pdf", pdf(new PaperDocument(stock.Name, language, [.. pages.Select(p => p.Page)])))];
        }

        return
        [
            new PendingFile(
                $"sheet-{stock.Id}.pdf",
                pdf(SheetDocument.Make(stock.Name, language, [.. pages.Select(p => p.Page)], stock, settings))
            ),
        ];
    }
}
