using System.CommandLine;
using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Draws documents and writes them in the formats asked for.</summary>
internal sealed class Printer(PaperShop shop, string folder, IReadOnlyList<string> formats, double dotsPerInch, PdfPurpose purpose)
{
    private const int FilesAtOnce = 8;

    /// <summary>What documents are made with.</summary>
    public PaperShop Shop => shop;

    /// <summary>A printer set up from the command line.</summary>
    public static Printer Open(ParseResult parse, PaperOptions paper, IReadOnlyDictionary<string, string> data, Problems problems) =>
        new(
            ShippedShop.Open(data, parse.GetValue(paper.Templates), problems),
            parse.GetValue(paper.Out) ?? ".",
            parse.GetValue(paper.Formats) ?? ["pdf"],
            parse.GetValue(paper.Resolution),
            parse.GetValue(paper.Purpose)
        );

    /// <summary>A paper's PDF.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="kind">Its kind: an archive's PDF has inside what it shows.</param>
    /// <param name="session">Knows in which folder a candle lies.</param>
    /// <param name="a">Whose paper it is.</param>
    public byte[] Pdf(MadePaper paper, PaperKind kind, Session session, Assessment a) =>
        purpose switch
        {
            PdfPurpose.People => paper.Pdf(),
            PdfPurpose.Archive => PdfDrawing.Archive(paper.Document, KeptFiles.Of(session.FolderOf, [a], kind.AlsoShown)),
            _ => PdfDrawing.Draw(paper.Document, purpose),
        };

    /// <summary>A document's PDF.</summary>
    /// <param name="document">The document.</param>
    /// <param name="session">Knows in which folder a candle lies.</param>
    /// <param name="assessments">Whose paper it is: an archive's PDF has them inside.</param>
    public byte[] Pdf(PaperDocument document, Session session, IReadOnlyList<Assessment> assessments) =>
        purpose == PdfPurpose.Archive
            ? PdfDrawing.Archive(document, KeptFiles.Of(session.FolderOf, assessments, (_, _) => []))
            : PdfDrawing.Draw(document, purpose);

    /// <summary>Files of a document. Drawing is the slow part and every file is on its own, so all cores draw.</summary>
    /// <param name="name">Name without format.</param>
    /// <param name="document">The document.</param>
    /// <param name="pdf">Makes its PDF.</param>
    /// <param name="pdfOnly">Leaves out pictures of the pages, whatever formats were asked for.</param>
    public IReadOnlyList<PendingFile> Draw(string name, PaperDocument document, Func<byte[]> pdf, bool pdfOnly = false)
    {
        var work = new List<(string File, Func<byte[]> Draw)>();
        if (pdfOnly || formats.Contains("pdf"))
        {
            work.Add((name + ".pdf", pdf));
        }

        for (int i = 0; i < document.Pages.Count && !pdfOnly; i++)
        {
            Scene scene = document.Pages[i];
            string page = document.Pages.Count == 1 ? name : $"{name}-{i + 1}";
            if (formats.Contains("png"))
            {
                work.Add((page + ".png", () => PngDrawing.Draw(scene, dotsPerInch)));
            }

            if (formats.Contains("svg"))
            {
                work.Add((page + ".svg", () => Encoding.UTF8.GetBytes(SvgDrawing.Draw(scene, document.Title))));
            }
        }

        var files = new PendingFile[work.Count];
        Parallel.For(0, work.Count, i => files[i] = new PendingFile(work[i].File, work[i].Draw()));
        return files;
    }

    /// <summary>Writes files into the folder and says where they lie, in their order; or the only one to the standard output.</summary>
    /// <exception cref="IOException">Two have one name; or one could not be written, and those before it were.</exception>
    public void Write(IEnumerable<PendingFile> files, Session session)
    {
        session.Progress.Clear();
        if (folder == StandardOutput.Sign)
        {
            session.Documents.Write(files);
            return;
        }

        // A file is there when the disk says so; meanwhile others are written.
        ParallelQuery<string> written = FilesApart
            .Of(files)
            .AsParallel()
            .AsOrdered()
            .WithDegreeOfParallelism(FilesAtOnce)
            .WithMergeOptions(ParallelMergeOptions.NotBuffered)
            .Select(file => file.WriteInto(folder));
        try
        {
            foreach (string path in written)
            {
                session.Written.WriteLine(path);
            }
        }
        catch (AggregateException error) when (error.InnerExceptions[0] is IOException first)
        {
            throw new IOException(first.Message, first);
        }
    }
}
