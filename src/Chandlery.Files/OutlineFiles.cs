using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Paper.Designs;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Reads the cut lines of labels from the files that declarations name.</summary>
public static class OutlineFiles
{
    /// <summary>A declaration as it was read, with the outline that a candle's label names; null when that cannot be read.</summary>
    /// <param name="declaration">The declaration; null stays null.</param>
    /// <param name="file">Its file.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static IDeclaration? With(IDeclaration? declaration, string file, Problems problems) =>
        declaration is not Candle { Label.OutlineFile: not null } shaped ? declaration
        : Take(shaped.Label, file, problems) is { } label ? shaped with { Label = label }
        : null;

    private const long LargestFile = 1_000_000;

    /// <summary>The label with its cut line; null where the file is missing or holds none.</summary>
    /// <param name="label">A label whose outline lies in a file.</param>
    /// <param name="declaration">The declaration's file.</param>
    /// <param name="problems">Collects what is wrong.</param>
    internal static LabelRequest? Take(LabelRequest label, string declaration, Problems problems)
    {
        (string name, TextPlace place) = (label.OutlineFile!.Name, label.OutlineFile.Place);
        var file = new FileInfo(Path.Combine(Path.GetDirectoryName(declaration) ?? ".", name));
        if (!file.Exists)
        {
            problems.Add(
                place,
                $"There is no file '{name}' beside this one.",
                "Put the outline into the same folder, or list its corners: 'outlineMm: [0 0, 120 0, 60 100]'."
            );
            return null;
        }

        if (file.Length > LargestFile || file.Attributes.HasFlag(FileAttributes.ReparsePoint))
        {
            problems.Add(
                place,
                $"'{name}' is a link or larger than 1 MB.",
                "Put the file itself here, with nothing in it but the cut line."
            );
            return null;
        }

        try
        {
            LabelOutline outline = SvgOutline.Read(File.ReadAllText(file.FullName));
            var own = new Problems();
            LabelReader.CheckSize(outline, place, own);
            problems.AddRange(own.Found);
            return own.None ? label.Along(outline) : null;
        }
        catch (FormatException error)
        {
            problems.Add(
                place,
                $"'{name}' is no outline of a label: {error.Message}.",
                "Draw the cut line as one closed path, save it as plain SVG, and give the page's size in millimetres."
            );
            return null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            problems.Add(place, $"'{name}' cannot be read: {error.Message}");
            return null;
        }
    }
}
