using System.Text;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Reads text files that people wrote.</summary>
public static class TextFile
{
    private const long LargestBytes = 4_000_000;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>
    /// Whether opening the file may wait for ever. A pipe, a device and a socket say that they are empty, as an empty file does:
    /// none of them holds anything to read.
    /// </summary>
    public static bool MayBlock(string path) => new FileInfo(path).Length == 0;

    /// <summary>
    /// The text of a file that was found in a folder, not named by the user; null with a problem when it cannot be read, is empty
    /// or no regular file.
    /// </summary>
    public static string? ReadListed(string path, string shownAs, Problems problems)
    {
        if (File.Exists(path) && MayBlock(path))
        {
            problems.Add(
                new TextPlace(shownAs, 0, 0),
                "The file is empty, or is no regular file (a pipe, a device), and was not read.",
                "Fill it, or move it out of the folder."
            );
            return null;
        }

        return Read(path, shownAs, problems);
    }

    /// <summary>The text, or null with a problem when it cannot be read or is not UTF-8 (or UTF-16 with a mark).</summary>
    public static string? Read(string path, string shownAs, Problems problems)
    {
        var place = new TextPlace(shownAs, 0, 0);
        try
        {
            var file = new FileInfo(path);
            if (file.Length > LargestBytes)
            {
                problems.Add(
                    place,
                    $"The file is larger than {LargestBytes / 1_000_000} MB.",
                    "A declaration is a page or two: is this the right file?"
                );
                return null;
            }

            byte[] bytes = File.ReadAllBytes(path);
            return bytes switch
            {
                [0xEF, 0xBB, 0xBF, ..] => StrictUtf8.GetString(bytes, 3, bytes.Length - 3),
                [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2),
                [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2),
                _ => StrictUtf8.GetString(bytes),
            };
        }
        catch (DecoderFallbackException)
        {
            problems.Add(place, "The file is not UTF-8 text.", "Save it again with the encoding UTF-8.");
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            problems.Add(place, $"The file cannot be read: {error.Message}");
        }

        return null;
    }
}
