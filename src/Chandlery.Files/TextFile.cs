using System.Buffers;
using System.Text;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Reads text files that people wrote.</summary>
public static class TextFile
{
    private const long LargestBytes = 4_000_000;
    private const int PartBytes = 16 * 1024;

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(20);

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>
    /// Whether opening the file may wait for ever. A pipe, a device and a socket say that they are empty, as an empty file does:
    /// none of them holds anything to read.
    /// </summary>
    public static bool MayBlock(string path) => new FileInfo(path) is { Exists: true, Length: 0 };

    /// <summary>
    /// The text of a file that was found in a folder, not named by the user; null with a problem when it cannot be read, is empty
    /// or no regular file.
    /// </summary>
    public static string? ReadListed(string path, string shownAs, Problems problems)
    {
        if (MayBlock(path))
        {
            problems.Add(
                new TextPlace(shownAs, 0, 0),
                "The file is empty, or is no regular file (a pipe, a device), and was not read.",
                "Fill it, or move it out of the folder."
            );
            return null;
        }

        return ReadAgain(path, shownAs, problems);
    }

    /// <summary>The text of a file from which something was read before; null with a problem when it cannot be read.</summary>
    public static string? ReadAgain(string path, string shownAs, Problems problems) => Read(() => Open(path), shownAs, problems);

    /// <summary>The text, or null with a problem when it cannot be read or is not UTF-8 (or UTF-16 with a mark).</summary>
    public static string? Read(string path, string shownAs, Problems problems) =>
        Read(() => MayBlock(path) ? InTime(path) : Open(path), shownAs, problems);

    /// <summary>The text of a stream, which need not end: what is too long is refused as soon as it is.</summary>
    public static string? Read(Stream stream, string shownAs, Problems problems) => Read(() => stream, shownAs, problems);

    private static FileStream Open(string path) => new(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);

    private static string? Read(Func<Stream> open, string shownAs, Problems problems)
    {
        var place = new TextPlace(shownAs, 0, 0);
        try
        {
            using Stream stream = open();
            return Bounded(stream) is { } bytes ? Decoded(bytes) : TooLarge();
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

        string? TooLarge()
        {
            problems.Add(
                place,
                $"The file is larger than {LargestBytes / 1_000_000} MB.",
                "A declaration is a page or two: is this the right file?"
            );
            return null;
        }
    }

    private static string Decoded(byte[] bytes) =>
        bytes switch
        {
            [0xEF, 0xBB, 0xBF, ..] => StrictUtf8.GetString(bytes, 3, bytes.Length - 3),
            [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2),
            [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2),
            _ => StrictUtf8.GetString(bytes),
        };

    // Null when there is more than any file of ours has.
    private static byte[]? Bounded(Stream stream)
    {
        using var read = new MemoryStream();
        byte[] part = ArrayPool<byte>.Shared.Rent(PartBytes);
        try
        {
            for (int count = stream.Read(part); count > 0; count = stream.Read(part))
            {
                read.Write(part, 0, count);
                if (read.Length > LargestBytes)
                {
                    return null;
                }
            }

            return read.ToArray();
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(part);
        }
    }

    // A pipe that nobody writes into lets whoever opens it wait for ever.
    private static MemoryStream InTime(string path)
    {
        Task<byte[]?> reading = Task.Run(() =>
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read);
            return Bounded(stream);
        });
        return Task.WaitAny([reading], LongestWait) >= 0
            ? new MemoryStream(reading.GetAwaiter().GetResult() ?? new byte[LargestBytes + 1])
            : throw new IOException($"nothing came for {LongestWait.TotalSeconds} seconds. Is it a pipe that nobody writes into?");
    }
}
