using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Workbench.Forms;
using Chandlery.Workbench.Keeping;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Sheets;

/// <summary>Takes suppliers' PDFs in: each is kept beside the declarations, and drafts an oil that waits for its review.</summary>
internal static class SheetDesk
{
    private const string Folder = "sheets";
    private const int MostRemembered = 12;

    /// <summary>Drafts an oil from the PDFs of one supplier's oil, and keeps them.</summary>
    /// <param name="room">The folder.</param>
    /// <param name="files">The PDFs with the names that people know them by.</param>
    /// <returns>Name of the oil's declaration; refused with the reason in words.</returns>
    public static Parsed<string> Draft(Workroom room, IReadOnlyList<(string Name, byte[] Content)> files)
    {
        var pdfs = new List<SupplierPdf>();
        foreach ((string name, byte[] content) in files)
        {
            Parsed<IReadOnlyList<SheetPage>> pages = room.ReadsPdf(content);
            if (!pages.Success)
            {
                return Parsed.Not<string>($"{name}: {pages.Reason}");
            }

            pdfs.Add(new SupplierPdf(name, content, pages.Value));
        }

        var problems = new Problems();
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        if (DraftMaker.Make(pdfs, data, room.Lawbook.Vocabulary, problems) is not { } draft || !problems.None)
        {
            return Parsed.Not<string>(string.Join(' ', problems.Found.Select(room.Shown)));
        }

        foreach ((SupplierPdf pdf, DraftSource source) in pdfs.Zip(draft.Sources))
        {
            AtomicFile.Write(FileOf(room, source.Sha256), pdf.Content);

            // The review asks for the same pages next.
            Remember(room, source.Sha256, () => pdf.Pages);
        }

        string yaml = DraftYaml.Write(DraftChecks.Marked(draft, room.Lawbook.Substances)).Text;
        lock (room.Writing)
        {
            DeclarationFolder folder = room.Folder();
            string id = DeclaredFile.NewId(folder, "oil", draft.Name?.Value ?? Path.GetFileNameWithoutExtension(files[0].Name));
            room.History.Keep($"{id} drafted from {files[0].Name}", [new FileText(DeclaredFile.Of(folder, "oil", id)!, null, yaml)]);
            return Parsed.As(id);
        }
    }

    /// <summary>The pages of a PDF that was taken in; null when it is not there or cannot be read any more.</summary>
    public static IReadOnlyList<SheetPage>? Pages(Workroom room, string sha256)
    {
        if (sha256.Length != 64 || !sha256.All(char.IsAsciiHexDigitLower) || !File.Exists(FileOf(room, sha256)))
        {
            return null;
        }

        return Remember(room, sha256, () => room.ReadsPdf(File.ReadAllBytes(FileOf(room, sha256))).OrNull());
    }

    private static IReadOnlyList<SheetPage>? Remember(Workroom room, string sha256, Func<IReadOnlyList<SheetPage>?> read)
    {
        if (room.ReadSheets.Count >= MostRemembered)
        {
            room.ReadSheets.Clear();
        }

        return room.ReadSheets.GetOrAdd(sha256, _ => read());
    }

    private static string FileOf(Workroom room, string sha256) => Path.Combine(room.Root, Folder, sha256 + ".pdf");
}
