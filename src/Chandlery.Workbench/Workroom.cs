using System.Collections.Concurrent;
using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Papers;
using Chandlery.Register;
using Chandlery.Workbench.Keeping;
using Chandlery.Yaml;

namespace Chandlery.Workbench;

/// <summary>The opened folder with law and templates, read again when a file has changed.</summary>
public sealed class Workroom
{
    private readonly Lock reading = new();
    private DeclarationFolder? folder;
    private Lazy<BrandKit> brand = new(BrandKit.None);
    private string signature = "";

    private Workroom(string root, Lawbook lawbook, PaperShop shop, PaperList papers)
    {
        Root = Path.GetFullPath(root);
        Lawbook = lawbook;
        Shop = shop;
        Papers = papers;
        History = new History(Root);
        Formulations = new FormulationNumbers(History);
    }

    /// <summary>The maker's folder, a full path.</summary>
    public string Root { get; }

    /// <summary>Law and languages.</summary>
    public Lawbook Lawbook { get; }

    /// <summary>Templates and drawings.</summary>
    public PaperShop Shop { get; }

    /// <summary>The papers that the page offers.</summary>
    public PaperList Papers { get; }

    /// <summary>Takes a supplier's PDF apart; who opens the room may do that in a process of its own.</summary>
    public Func<byte[], Parsed<IReadOnlyList<SheetPage>>> ReadsPdf { get; init; } = PdfWords.Parse;

    /// <summary>Pages of suppliers' PDFs by their hash: a review asks for them with every answer.</summary>
    internal ConcurrentDictionary<string, IReadOnlyList<SheetPage>?> ReadSheets { get; } = new(StringComparer.Ordinal);

    /// <summary>What the page changed, and how to take it back.</summary>
    internal History History { get; }

    /// <summary>Formulation numbers that compositions have or had.</summary>
    internal FormulationNumbers Formulations { get; }

    /// <summary>Held while files of the folder are written: two saves from one base, the second must see what the first wrote.</summary>
    internal Lock Writing { get; } = new();

    /// <summary>The law's day.</summary>
    internal static DateOnly Today => DateOnly.FromDateTime(DateTime.Today);

    /// <summary>Where the register is.</summary>
    internal RegisterPlace Register => RegisterPlace.OfFolder(Root);

    /// <summary>Opens a folder; null with problems when law or templates cannot be read.</summary>
    public static Workroom? Open(string root, Problems problems) => Open(root, PaperList.Own, null, problems);

    /// <summary>Opens a folder over a list of papers; null with problems when law or templates cannot be read.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="papers">The papers that the page offers.</param>
    /// <param name="readsPdf">Takes PDFs apart; null to do it in this process.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static Workroom? Open(string root, PaperList papers, Func<byte[], Parsed<IReadOnlyList<SheetPage>>>? readsPdf, Problems problems)
    {
        if (!Directory.Exists(root))
        {
            problems.Add(new TextPlace(root, 0, 0), "There is no such folder.", "Name the folder with your maker.yaml.");
            return null;
        }

        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        Lawbook? lawbook = ShippedLaw.Open(data, null, problems);
        PaperShop shop = ShippedShop.Open(data, null, problems);
        return lawbook is null || !problems.None
            ? null
            : new Workroom(DeclarationFolder.RootOf(root), lawbook, shop, papers) { ReadsPdf = readsPdf ?? PdfWords.Parse };
    }

    /// <summary>A room over another folder with the same law and templates.</summary>
    internal Workroom Beside(string root) => new(root, Lawbook, Shop, Papers) { ReadsPdf = ReadsPdf };

    /// <summary>The folder's declarations as they are on disk now.</summary>
    public DeclarationFolder Folder()
    {
        lock (reading)
        {
            string now = Signature();
            if (folder is null || now != signature)
            {
                folder = DeclarationFolder.Open(Root, Lawbook.Vocabulary);
                brand = BrandFiles.WhenAsked(folder.Catalogue);
                signature = now;
            }

            return folder;
        }
    }

    /// <summary>What fronts are drawn with, as the files were when the folder was last asked for.</summary>
    internal Lazy<BrandKit> Brand => Volatile.Read(ref brand);

    /// <summary>A problem with its place as people know it, below the folder.</summary>
    internal string Shown(Problem problem) => problem.ToString().Replace(Root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);

    // Names, sizes and times of the files: what an editor changes when it saves.
    private string Signature()
    {
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            IgnoreInaccessible = true,
            AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden,
        };
        long hash = 17;
        foreach (
            FileInfo file in new DirectoryInfo(Root).EnumerateFiles("*.y*ml", options).OrderBy(f => f.FullName, StringComparer.Ordinal)
        )
        {
            hash = (hash * 31) + file.FullName.GetHashCode(StringComparison.Ordinal);
            hash = (hash * 31) + file.LastWriteTimeUtc.Ticks;
            hash = (hash * 31) + file.Length;
        }

        return $"{hash}";
    }
}
