namespace Chandlery.Workshop;

/// <summary>Writes files so that a reader sees the old content or the new, never a half.</summary>
public static class AtomicFile
{
    /// <summary>Writes beside the target, flushes to disk, then renames over it.</summary>
    /// <exception cref="IOException">The folder cannot be written or the disk is full; the old file is untouched.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        Directory.CreateDirectory(folder);
        string temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Guid.NewGuid():N}.tmp");
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            }

            File.Move(temporary, path, overwrite: true);
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }
    }

    /// <summary>Writes text as UTF-8 without a byte-order mark.</summary>
    /// <exception cref="IOException">As for bytes.</exception>
    public static void Write(string path, string text) => Write(path, System.Text.Encoding.UTF8.GetBytes(text));
}
