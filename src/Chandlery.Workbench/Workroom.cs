using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Workbench;

/// <summary>The opened folder with law and templates, read again when a file has changed.</summary>
public sealed class Workroom
{
    private readonly Lock reading = new();
    private DeclarationFolder? folder;
    private string signature = "";

    private Workroom(string root, Lawbook lawbook, PaperShop shop, PaperList papers)
    {
        Root = root;
        Lawbook = lawbook;
        Shop = shop;
        Papers = papers;
    }

    /// <summary>The maker's folder, a full path.</summary>
    public string Root { get; }

    /// <summary>Law and languages.</summary>
    public Lawbook Lawbook { get; }

    /// <summary>Templates and drawings.</summary>
    public PaperShop Shop { get; }

    /// <summary>The papers that the page offers.</summary>
    public PaperList Papers { get; }

    /// <summary>Opens a folder; null with problems when law or templates cannot be read.</summary>
    public static Workroom? Open(string root, Problems problems) => Open(root, PaperList.Own, problems);

    /// <summary>Opens a folder over a list of papers; null with problems when law or templates cannot be read.</summary>
    public static Workroom? Open(string root, PaperList papers, Problems problems)
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
            : new Workroom(Path.GetFullPath(DeclarationFolder.RootOf(root)), lawbook, shop, papers);
    }

    /// <summary>The folder's declarations as they are on disk now.</summary>
    public DeclarationFolder Folder()
    {
        lock (reading)
        {
            string now = Signature();
            if (folder is null || now != signature)
            {
                folder = DeclarationFolder.Open(Root, Lawbook.Vocabulary);
                signature = now;
            }

            return folder;
        }
    }

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
