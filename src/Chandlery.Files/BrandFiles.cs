using Chandlery.Core.Declared;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Loads what a brand's declaration names: its logo and its face, which lie beside it.</summary>
public static class BrandFiles
{
    private const long LargestFile = 20_000_000;

    /// <summary>The brand of a maker's folder; <see cref="BrandKit.None"/> for a maker without one.</summary>
    /// <param name="catalogue">What the folder declares.</param>
    /// <param name="problems">Collects files that are missing or cannot be printed.</param>
    public static BrandKit Open(Catalogue catalogue, Problems problems)
    {
        if (catalogue.OfKind<Brand>().FirstOrDefault() is not { } brand)
        {
            return BrandKit.None;
        }

        Face? face = brand.NameFont is { } font ? Load(brand, font, brand.NameFontPlace, Face.Open, problems) : null;
        LogoArt? logo = brand.Logo is { } file
            ? Load(
                brand,
                file,
                brand.LogoPlace,
                bytes =>
                    file.EndsWith(".svg", StringComparison.OrdinalIgnoreCase)
                        ? SvgLogo.Read(System.Text.Encoding.UTF8.GetString(bytes))
                        : PictureLogo.Read(bytes, Ink.White),
                problems
            )
            : null;
        return new BrandKit(brand, face, logo);
    }

    /// <summary>The same when somebody asks for it, once; what is wrong stands in it.</summary>
    public static Lazy<BrandKit> WhenAsked(Catalogue catalogue) =>
        new(() =>
        {
            var problems = new Problems();
            return Open(catalogue, problems) with { Problems = problems.Found };
        });

    private static T? Load<T>(Brand brand, string name, TextPlace place, Func<byte[], T> read, Problems problems)
        where T : class
    {
        string path = Path.Combine(Path.GetDirectoryName(brand.Place.File) ?? ".", name);
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            problems.Add(place, $"There is no file '{name}' beside the brand's.", "Put it into the same folder, or take the line out.");
            return null;
        }

        if (file.Length > LargestFile || file.Attributes.HasFlag(FileAttributes.ReparsePoint))
        {
            problems.Add(place, $"'{name}' is a link or larger than 20 MB.", "Put the file itself here, in a size that a label needs.");
            return null;
        }

        try
        {
            return read(File.ReadAllBytes(path));
        }
        catch (FormatException error)
        {
            problems.Add(place, $"'{name}' cannot be used: {error.Message}.", "Save it anew, or take the line out.");
            return null;
        }
    }
}
