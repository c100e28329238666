namespace Chandlery.Files;

/// <summary>Writes files so that a reader sees the old content or the new, never a half.</summary>
public static class AtomicFile
{
    // Nobody writes one file for so long: what is older was left by a program that was killed.
    private static readonly TimeSpan LongestWrite = TimeSpan.FromMinutes(1);

    // The numbers by which Linux and macOS, and Windows, name these conditions.
    private const int UnixDiskFull = 28;
    private const int UnixReadOnly = 30;
    private const int WindowsDiskFull = unchecked((int)0x80070070);
    private const int WindowsReadOnly = unchecked((int)0x80070013);

    /// <summary>Writes beside the target, flushes to disk, then renames over it.</summary>
    /// <exception cref="IOException">
    /// The folder cannot be written or the disk is full; the old file is untouched, and the message says so.
    /// </exception>
    public static void Write(string path, ReadOnlySpan<byte> content) => Replace(path, content, (stream, bytes) => stream.Write(bytes));

    /// <summary>Writes text as UTF-8 without a byte-order mark, as it comes: a long one is never held as a whole.</summary>
    /// <exception cref="IOException">As for bytes.</exception>
    public static void Write(string path, Action<TextWriter> write) =>
        Replace(
            path,
            write,
            (stream, work) =>
            {
                using var text = new StreamWriter(stream, leaveOpen: true);
                work(text);
            }
        );

    private static void Replace<T>(string path, T content, Action<FileStream, T> write)
        where T : allows ref struct
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        string temporary = Path.Combine(folder, $".{Path.GetFileName(path)}.{Guid.NewGuid():N}.tmp");
        try
        {
            Directory.CreateDirectory(folder);
            RemoveLeftovers(folder, Path.GetFileName(path));
            try
            {
                using (var stream = new FileStream(temporary, ForOwner(path)))
                {
                    write(stream, content);
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
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new IOException($"{path}: not written, and nothing there was changed: {Reason(error)}.", error);
        }
    }

    private static void RemoveLeftovers(string folder, string name)
    {
        foreach (FileInfo leftover in new DirectoryInfo(folder).EnumerateFiles($".{name}.*.tmp"))
        {
            if (leftover.LastWriteTimeUtc < DateTime.UtcNow - LongestWrite)
            {
                leftover.Delete();
            }
        }
    }

    // A file that its owner keeps to himself stays so: the new one takes over the rights of the old.
    private static FileStreamOptions ForOwner(string path)
    {
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
            Share = FileShare.None,
        };
        if (!OperatingSystem.IsWindows() && File.Exists(path))
        {
            options.UnixCreateMode = File.GetUnixFileMode(path);
        }

        return options;
    }

    /// <summary>Writes text as UTF-8 without a byte-order mark.</summary>
    /// <exception cref="IOException">As for bytes.</exception>
    public static void Write(string path, string text) => Write(path, System.Text.Encoding.UTF8.GetBytes(text));

    private static string Reason(Exception error) =>
        error.HResult switch
        {
            UnixDiskFull or WindowsDiskFull => "the disk is full; make room and run the command again",
            UnixReadOnly or WindowsReadOnly => "the disk is read-only; write to another folder",
            _ when error is UnauthorizedAccessException => "you may not write there; choose another folder or ask for the right",
            _ => error.Message.TrimEnd('.'),
        };
}
