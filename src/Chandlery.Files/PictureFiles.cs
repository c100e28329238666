using Chandlery.Core.Declared;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Opens the pictures of products that declarations name; they lie beside them.</summary>
public static class PictureFiles
{
    private const long LargestFile = 40_000_000;

    /// <summary>The picture of a candle as a page of its own; null where it declares none, or with problems.</summary>
    /// <param name="candle">The candle.</param>
    /// <param name="problems">Collects what is wrong with the file.</param>
    public static Scene? Open(Candle candle, Problems problems) => OpenWithFile(candle, problems)?.Scene;

    /// <summary>The same with the picture's file, as it is.</summary>
    /// <param name="candle">The candle.</param>
    /// <param name="problems">Collects what is wrong with the file.</param>
    public static (Scene Scene, byte[] File)? OpenWithFile(Candle candle, Problems problems)
    {
        if (candle.Picture is not { } picture || Find(picture, candle.Place.File, problems) is not { } path)
        {
            return null;
        }

        byte[] file = File.ReadAllBytes(path);
        try
        {
            return (ProductPicture.Read(picture.Name, file), file);
        }
        catch (FormatException error)
        {
            problems.Add(picture.Place, $"'{picture.Name}' cannot be used: {error.Message}.", "Save it anew, or take the line out.");
            return null;
        }
    }

    /// <summary>The same when somebody asks for it, once; a picture that cannot be used is none.</summary>
    public static Lazy<Scene?> WhenAsked(Candle candle) => new(() => Open(candle, new Problems()));

    private static string? Find(PictureFile picture, string declaration, Problems problems)
    {
        var file = new FileInfo(Path.Combine(Path.GetDirectoryName(declaration) ?? ".", picture.Name));
        if (!file.Exists)
        {
            problems.Add(
                picture.Place,
                $"There is no file '{picture.Name}' beside this one.",
                "Put the picture into the same folder, or take the line out."
            );
            return null;
        }

        if (file.Length > LargestFile || file.Attributes.HasFlag(FileAttributes.ReparsePoint))
        {
            problems.Add(picture.Place, $"'{picture.Name}' is a link or larger than 40 MB.", "Put the file itself here, saved smaller.");
            return null;
        }

        return file.FullName;
    }
}
