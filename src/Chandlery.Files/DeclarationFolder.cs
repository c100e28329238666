using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>A maker's folder of declarations.</summary>
/// <param name="Root">The folder.</param>
/// <param name="Catalogue">What it declares.</param>
/// <param name="AskedFile">The file that the user's path means; null when it means a folder.</param>
/// <param name="Asked">The candles or batches that the user's path means: one file, or all of the folder that was named.</param>
/// <param name="Problems">What is wrong with its files.</param>
public sealed record DeclarationFolder(
    string Root,
    Catalogue Catalogue,
    string? AskedFile,
    IReadOnlyList<IDeclaration> Asked,
    Problems Problems
)
{
    /// <summary>Opens the maker's folder that a path lies in: see <see cref="RootOf"/>.</summary>
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

        string root = RootOf(path);
        var reader = new DeclarationReader(vocabulary);
        IReadOnlyList<string> files = DeclarationFiles.Of(root, problems);
        var read = new ReadDeclaration[files.Count];
        Parallel.For(0, files.Count, i => read[i] = DeclarationFiles.Read(files[i], ShownAs(files[i]), reader));
        problems.AddRange(read.SelectMany(r => r.Problems));
        var catalogue = new Catalogue(
            read.Select(r => r.Declaration).OfType<IDeclaration>(),
            problems,
            read.Select(r => r.Wrong).OfType<WrongFile>()
        );
        IReadOnlyList<IDeclaration> asked =
        [
            .. catalogue.OfKind<Candle>().Where(c => IsAsked(c.Place.File)),
            .. catalogue.OfKind<Batch>().Where(b => IsAsked(b.Place.File)),
        ];
        if (isFile && asked.Count == 0 && catalogue.All.Any(d => IsAsked(d.Place.File)))
        {
            problems.Add(
                new TextPlace(path, 0, 0),
                "This file declares no candle and no batch.",
                "Name a candle's or batch's file, or the folder."
            );
        }
        else if (
            asked.Count == 0
            && !catalogue.Wrong.Any(w => IsAsked(w.File))
            && (isFile || (!catalogue.OfKind<Trial>().Any(t => IsAsked(t.Place.File)) && (problems.None || catalogue.All.Count > 0)))
        )
        {
            problems.Add(isFile ? NoDeclaration(path) : NoCandle(path));
        }

        return new DeclarationFolder(root, catalogue, isFile ? path : null, asked, problems);

        // The user's own way of naming it, so that messages name it alike.
        string ShownAs(string file) => isFile && Path.GetFullPath(file) == Path.GetFullPath(path) ? path : file;

        bool IsAsked(string file) => isFile ? file == path : IsWithin(file, path);

        DeclarationFolder Nothing(string what, string remedy)
        {
            problems.Add(new TextPlace(path, 0, 0), what, remedy);
            return new DeclarationFolder(path, new Catalogue([], problems), null, [], problems);
        }
    }

    /// <summary>Opens the maker's folder around the present one, with a candle or batch that is not a file of it.</summary>
    /// <param name="text">The declaration.</param>
    /// <param name="shownAs">How messages call it.</param>
    /// <param name="vocabulary">Hazard classes that declarations may name.</param>
    public static DeclarationFolder OpenTyped(string text, string shownAs, HazardVocabulary vocabulary)
    {
        var problems = new Problems();
        string root = RootOf(".");
        var reader = new DeclarationReader(vocabulary);
        IDeclaration? typed = reader.Read(text, shownAs, shownAs.Replace(' ', '-'), problems);
        if (typed is not (Candle or Batch) && problems.None)
        {
            problems.Add(NoDeclaration(shownAs));
        }

        if (!problems.None)
        {
            return new DeclarationFolder(root, new Catalogue([], problems), shownAs, [], problems);
        }

        List<ReadDeclaration> read = [.. DeclarationFiles.Of(root, problems).Select(f => DeclarationFiles.Read(f, f, reader))];
        problems.AddRange(read.SelectMany(r => r.Problems));
        var catalogue = new Catalogue(
            [.. read.Select(r => r.Declaration).OfType<IDeclaration>(), typed!],
            problems,
            read.Select(r => r.Wrong).OfType<WrongFile>()
        );
        return new DeclarationFolder(root, catalogue, shownAs, [typed!], problems);
    }

    /// <summary>Says that a folder holds no candle, where one is needed: whoever only tries blends has none yet.</summary>
    public static Problem NoCandle(string path) =>
        new(new TextPlace(path, 0, 0), "No candle is declared here.", "A candle is a .yaml file with 'declares: candle'.");

    private static Problem NoDeclaration(string path) =>
        new(new TextPlace(path, 0, 0), "This is no declaration of the folder.", "A candle is a .yaml file with 'declares: candle'.");

    /// <summary>
    /// The maker's folder that a path lies in: the nearest one at it or above it that has a <c>maker.yaml</c>; the path's own folder
    /// when there is none.
    /// </summary>
    public static string RootOf(string path)
    {
        string own =
            Directory.Exists(path) ? path
            : Path.GetDirectoryName(path) is { Length: > 0 } folder ? folder
            : ".";
        if (HasMaker(own))
        {
            return own;
        }

        for (DirectoryInfo? above = new DirectoryInfo(Path.GetFullPath(own)).Parent; above is not null; above = above.Parent)
        {
            if (HasMaker(above.FullName))
            {
                return Path.GetRelativePath(Environment.CurrentDirectory, above.FullName);
            }
        }

        return own;
    }

    private static bool HasMaker(string folder) => File.Exists(Path.Combine(folder, DeclarationFiles.MakerFile));

    private static bool IsWithin(string file, string folder) =>
        Path.GetFullPath(file)
            .StartsWith(
                Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar,
                StringComparison.Ordinal
            );
}
