using System.CommandLine;
using System.Text;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Intake;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Drawing;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary><c>chandlery draft</c>: an oil's declaration drafted from its supplier's PDFs.</summary>
internal static class DraftCommand
{
    public static Command Build()
    {
        var pdfs = new Argument<string[]>("pdf")
        {
            Description = "The safety data sheet, and where there are any the IFRA certificate and the allergen statement of the same oil.",
            Arity = ArgumentArity.OneOrMore,
        };
        var output = new Option<string?>("--out")
        {
            Description =
                "File to write; - sends the declaration to the standard output. Default: the first PDF's name with .yaml, in the present folder.",
        };
        var replace = new Option<bool>("--replace")
        {
            Description = "Write over a file that exists. Without it, nothing is ever overwritten.",
        };
        var review = new Option<string?>("--review-pages")
        {
            Description = "Folder for pictures of the pages (PNG) with what was read outlined: grey where it is sure, red where it is not.",
        };
        var data = new Option<string?>("--data") { Description = "A folder whose files are used instead of the program's own data." };
        var command = new Command(
            "draft",
            "Draft an oil's declaration from its supplier's PDFs. Whatever is doubtful is marked and listed; no label is printed with the oil until a reviewer signs the draft."
        )
        {
            pdfs,
            output,
            replace,
            review,
            data,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    string[] files = parse.GetValue(pdfs)!;
                    string target = parse.GetValue(output) ?? Path.GetFileNameWithoutExtension(files[0]) + ".yaml";
                    return Draft(session, files, target, parse.GetValue(replace), parse.GetValue(review), parse.GetValue(data));
                }
            )
        );
        return command;
    }

    private static int Draft(Session session, string[] files, string target, bool replace, string? reviewFolder, string? dataFolder)
    {
        var problems = new Problems();
        if (File.Exists(target) && !replace)
        {
            problems.Add(
                new TextPlace(target, 0, 0),
                "The file exists and may hold a reviewer's work.",
                "Name another with --out, or add --replace."
            );
            return session.Report(problems.Found);
        }

        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(dataFolder, problems);
        Lawbook? lawbook = ShippedLaw.Open(data, dataFolder, problems);
        var pdfs = new List<SupplierPdf>();
        foreach (string file in files)
        {
            session.Progress.Tell(pdfs.Count, files.Length);
            if (Open(file, problems) is { } pdf)
            {
                pdfs.Add(pdf);
            }
        }

        OilDraft? draft = problems.None && lawbook is not null ? DraftMaker.Make(pdfs, data, lawbook.Vocabulary, problems) : null;
        if (draft is null)
        {
            return session.Report(problems.Found);
        }

        draft = DraftChecks.Marked(draft, lawbook!.Substances);
        (string yaml, IReadOnlyList<ReviewPoint> points) = DraftYaml.Write(draft);
        WriteReview(session, draft, pdfs, reviewFolder);
        session.WriteFile(target, Encoding.UTF8.GetBytes(yaml));
        string shown = StandardOutput.NameOf(target);
        IReadOnlyList<string> contradictions = DraftChecks.Contradictions(yaml, shown, lawbook, DateOnly.FromDateTime(DateTime.Today));
        Tell(session, shown, draft, points, contradictions);
        return points.Count + contradictions.Count == 0 ? ExitCode.Fine : ExitCode.StopsSale;
    }

    private static SupplierPdf? Open(string file, Problems problems)
    {
        var place = new TextPlace(file, 0, 0);
        if (!File.Exists(file))
        {
            problems.Add(place, "There is no such file.");
            return null;
        }

        if (new FileInfo(file).Length > PdfWords.LargestBytes)
        {
            problems.Add(
                place,
                $"The file is larger than {PdfWords.LargestBytes / 1_000_000} MB.",
                "A supplier's sheet is far smaller: is this the right file?"
            );
            return null;
        }

        byte[] content = File.ReadAllBytes(file);
        Parsed<IReadOnlyList<SheetPage>> pages = PdfWorker.Parse(content);
        if (pages.Success)
        {
            return new SupplierPdf(file, content, pages.Value);
        }

        problems.Add(place, pages.Reason);
        return null;
    }

    private static void WriteReview(Session session, OilDraft draft, IReadOnlyList<SupplierPdf> pdfs, string? folder)
    {
        if (folder is null)
        {
            return;
        }

        for (int i = 0; i < pdfs.Count; i++)
        {
            var pages = ReviewPages.Draw(draft, i, pdfs[i].Pages).Pages;
            for (int p = 0; p < pages.Count; p++)
            {
                string path = Path.Combine(folder, $"{Path.GetFileNameWithoutExtension(pdfs[i].File)}-page-{p + 1}.png");
                AtomicFile.Write(path, PngDrawing.Draw(pages[p], 150));
                session.Output.WriteLine(path);
            }
        }
    }

    private static void Tell(
        Session session,
        string target,
        OilDraft draft,
        IReadOnlyList<ReviewPoint> points,
        IReadOnlyList<string> contradictions
    )
    {
        session.Output.WriteLine($"{draft.Ingredients.Count} ingredients drafted. To review ({points.Count + contradictions.Count}):");
        foreach (ReviewPoint point in points)
        {
            session.Output.WriteLine($"  {target}:{point.Line}: {point.What}");
        }

        foreach (string contradiction in contradictions)
        {
            session.Output.WriteLine($"  {contradiction}");
        }

        session.Output.WriteLine("Compare every line with the PDF, not only these; then write your name and the day under 'reviewed'.");
    }
}
