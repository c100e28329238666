using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>The files of a folder of declarations.</summary>
internal static class DeclarationFiles
{
    private const int HeadBytes = 1024;

    /// <summary>Every YAML file of the folder, in order; links are not followed.</summary>
    public static IReadOnlyList<string> Of(string root, Problems problems)
    {
        try
        {
            var options = new EnumerationOptions
            {
                RecurseSubdirectories = true,
                IgnoreInaccessible = false,
                AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Hidden,
            };
            return [.. Directory.EnumerateFiles(root, "*", options).Where(IsYaml).Order(StringComparer.Ordinal)];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            problems.Add(new TextPlace(root, 0, 0), $"The folder cannot be read: {error.Message}");
            return [];
        }
    }

    /// <summary>The file in which a maker's folder declares the maker.</summary>
    public const string MakerFile = "maker.yaml";

    /// <summary>Reads the declaration in a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="shownAs">Its name in messages.</param>
    /// <param name="reader">Reads its text.</param>
    /// <param name="holdsText">True when something was read from it before, so that opening it again cannot wait for ever.</param>
    public static ReadDeclaration Read(string file, string shownAs, DeclarationReader reader, bool holdsText = false)
    {
        var problems = new Problems();
        string id = Path.GetFileNameWithoutExtension(file);
        string? text = holdsText ? TextFile.ReadAgain(file, shownAs, problems) : TextFile.ReadListed(file, shownAs, problems);
        IDeclaration? declaration = text is null ? null : OutlineFiles.With(reader.Read(text, shownAs, id, problems), file, problems);
        return new ReadDeclaration(
            declaration,
            declaration is null ? new WrongFile(id, KindOf(file, text ?? ""), shownAs) : null,
            problems.Found
        );
    }

    // The file is wrong, so its kind is looked for line by line.
    private static string? KindOf(string file, string text)
    {
        const string Key = "declares:";
        string? said = text.Split('\n').FirstOrDefault(line => line.StartsWith(Key, StringComparison.Ordinal));
        string kind = said?[Key.Length..].Split('#')[0].Trim(' ', '\r', '\t', '"', '\'') ?? "";
        return DeclarationReader.Kinds.Contains(kind) ? kind
            : Path.GetFileName(file) == MakerFile ? "maker"
            : null;
    }

    /// <summary>
    /// True when the first line that says anything is <c>declares: candle</c>: then the file declares a candle or is wrong. False
    /// when only reading it whole can tell.
    /// </summary>
    public static bool StartsAsCandle(string file)
    {
        Span<byte> head = stackalloc byte[HeadBytes];
        try
        {
            if (TextFile.MayBlock(file))
            {
                return false;
            }

            using Microsoft.Win32.SafeHandles.SafeFileHandle handle = File.OpenHandle(file);
            head = head[..RandomAccess.Read(handle, head, 0)];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return false;
        }

        while (head.IndexOf((byte)'\n') is var end and >= 0)
        {
            ReadOnlySpan<byte> line = head[..end].TrimEnd("\r "u8);
            if (line.Length > 0 && line[0] != '#')
            {
                return line.SequenceEqual("declares: candle"u8);
            }

            head = head[(end + 1)..];
        }

        return false;
    }

    private static bool IsYaml(string path) => Path.GetExtension(path) is ".yaml" or ".yml";
}
