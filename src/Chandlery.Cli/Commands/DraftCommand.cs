using System.CommandLine;
using System.Text;
using System.Text.Json;
using Chandlery.Cli.Answers;
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
        Option<bool> json = JsonOption.Of("draft");
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
            json,
        };
        command.SetAction(parse =>
            Session.Guard(
                parse,
                session =>
                {
                    string[] files = parse.GetValue(pdfs)!;
                    string target = parse.GetValue(output) ?? Path.GetFileNameWithoutExtension(files[0]) + ".yaml";
                    if (!MayWrite(session, target, parse.GetValue(replace)))
                    {
                        return ExitCode.BadInput;
                    }

                    bool isForPrograms = parse.GetValue(json);
                    return Draft(session, files, target, parse.GetValue(review), parse.GetValue(data), isForPrograms);
                }
            )
        );
        return command;
    }

    private static bool MayWrite(Session session, string target, bool replace)
    {
        if (!File.Exists(target) || replace)
        {
            return true;
        }

        var problems = new Problems();
        problems.Add(
            new TextPlace(target, 0, 0),
            "The file exists and may hold a reviewer's work.",
            "Name another with --out, or add --replace."
        );
        session.Report(problems.Found);
        return false;
    }

    private static int Draft(Session session, string[] files, string target, string? reviewFolder, string? dataFolder, bool isForPrograms)
    {
        var problems = new Problems();
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
        TextWriter told = isForPrograms ? TextWriter.Null : session.Output;
        IReadOnlyList<string> pages = [.. WriteReview(draft, pdfs, reviewFolder)];
        foreach (string page in pages)
        {
            told.WriteLine(page);
        }

        session.WriteFile(target, Encoding.UTF8.GetBytes(yaml), told);
        string shown = StandardOutput.NameOf(target);
        IReadOnlyList<string> contradictions = DraftChecks.Contradictions(yaml, shown, lawbook, DateOnly.FromDateTime(DateTime.Today));
        Tell(told, shown, draft, points, contradictions);
        if (isForPrograms)
        {
            var answer = new DraftAnswer(target, pages, draft.Ingredients.Count, points, contradictions);
            session.Output.WriteLine(JsonSerializer.Serialize(answer, AnswerJson.Plain.DraftAnswer));
        }

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

    private static IEnumerable<string> WriteReview(OilDraft draft, IReadOnlyList<SupplierPdf> pdfs, string? folder)
    {
        if (folder is null)
        {
            yield break;
        }

        for (int i = 0; i < pdfs.Count; i++)
        {
            var pages = ReviewPages.Draw(draft, i, pdfs[i].Pages).Pages;
            for (int p = 0; p < pages.Count; p++)
            {
                string path = Path.Combine(folder, $"{Path.GetFileNameWithoutExtension(pdfs[i].File)}-page-{p + 1}.png");
                AtomicFile.Write(path, PngDrawing.Draw(pages[p], 150));
                yield return path;
            }
        }
    }

    private static void Tell(
        TextWriter output,
        string target,
        OilDraft draft,
        IReadOnlyList<ReviewPoint> points,
        IReadOnlyList<string> contradictions
    )
    {
        output.WriteLine($"{draft.Ingredients.Count} ingredients drafted. To review ({points.Count + contradictions.Count}):");
        foreach (ReviewPoint point in points)
        {
            output.WriteLine($"  {target}:{point.Line}: {point.What}");
        }

        foreach (string contradiction in contradictions)
        {
            output.WriteLine($"  {contradiction}");
        }

        output.WriteLine("Compare every line with the PDF, not only these; then write your name and the day under 'reviewed'.");
    }
}
