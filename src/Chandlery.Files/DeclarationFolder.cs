using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>A maker's folder of declarations.</summary>
/// <param name="Root">The folder.</param>
/// <param name="Catalogue">What it declares.</param>
/// <param name="Asked">The candles or batches that the user's path means: one file, or all candles of the folder.</param>
/// <param name="Problems">What is wrong with its files.</param>
public sealed record DeclarationFolder(string Root, Catalogue Catalogue, IReadOnlyList<IDeclaration> Asked, Problems Problems)
{
    private const string MakerFile = "maker.yaml";

    /// <summary>Opens a folder, or the folder that a file belongs to: the nearest one above it that has a <c>maker.yaml</c>.</summary>
    /// <param name="path">A folder, or a candle's or batch's file.</param>
    /// <param name="vocabulary">Hazard classes that declarations may name.</param>
    public static DeclarationFolder Open(string path, HazardVocabulary vocabulary)
    {
        var problems = new Problems();
        bool isFile = File.Exists(path);
        if (!isFile && !Directory.Exists(path))
        {
            return Nothing("There is no such file or folder.", "Name a folder of declarations, or one candle's or batch's file.");
        }

        if (isFile && File.GetAttributes(path).HasFlag(FileAttributes.ReparsePoint))
        {
            return Nothing(
                "This is a link, and links are not followed: what is read lies in the folder itself.",
                "Name the file that it leads to, or put a copy here."
            );
        }

        string root = isFile ? RootOf(path) : path;
        var reader = new DeclarationReader(vocabulary);
        var declarations = new List<IDeclaration>();
        IDeclaration? asked = null;
        IEnumerable<(IDeclaration? Declaration, bool IsAsked, Problems Problems)> read = DeclarationFiles
            .Of(root, problems)
            .AsParallel()
            .AsOrdered()
            .Select(file =>
            {
                var own = new Problems();
                bool isAsked = isFile && Path.GetFullPath(file) == Path.GetFullPath(path);
                IDeclaration? declaration = DeclarationFiles.Read(file, isAsked ? path : file, reader, own);
                return (declaration, isAsked, own);
            });
        foreach ((IDeclaration? declaration, bool isAsked, Problems own) in read)
        {
            problems.AddRange(own.Found);
            if (declaration is not null)
            {
                declarations.Add(declaration);
                asked = isAsked ? declaration : asked;
            }
        }

        var catalogue = new Catalogue(declarations, problems);
        IReadOnlyList<IDeclaration> all = isFile
            ? (asked is null ? [] : [asked])
            : [.. catalogue.OfKind<Candle>(), .. catalogue.OfKind<Batch>()];
        if (isFile && asked is not (null or Candle or Batch))
        {
            problems.Add(
                new TextPlace(path, 0, 0),
                "This file declares no candle and no batch.",
                "Name a candle's or batch's file, or the folder."
            );
        }
        else if (all.Count == 0 && problems.None)
        {
            problems.Add(new TextPlace(path, 0, 0), "No candle is declared here.", "A candle is a .yaml file with 'declares: candle'.");
        }

        return new DeclarationFolder(root, catalogue, all, problems);

        DeclarationFolder Nothing(string what, string remedy)
        {
            problems.Add(new TextPlace(path, 0, 0), what, remedy);
            return new DeclarationFolder(path, new Catalogue([], problems), [], problems);
        }
    }

    private static string RootOf(string file)
    {
        string own = Path.GetDirectoryName(file) is { Length: > 0 } folder ? folder : ".";
        for (DirectoryInfo? above = new(own); above is not null; above = above.Parent)
        {
            if (File.Exists(Path.Combine(above.FullName, MakerFile)))
            {
                return Path.GetRelativePath(Environment.CurrentDirectory, above.FullName);
            }
        }

        return own;
    }
}
