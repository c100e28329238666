using System.IO.Compression;
using Chandlery.Files;

namespace Chandlery.Workbench.Desks;

/// <summary>Several files in one.</summary>
internal static class ZippedFiles
{
    /// <summary>The archive's bytes.</summary>
    public static byte[] Of(IEnumerable<PendingFile> files)
    {
        using var bytes = new MemoryStream();
        using (var archive = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (PendingFile file in files)
            {
                using Stream entry = archive.CreateEntry(file.Name).Open();
                entry.Write(file.Content);
            }
        }

        return bytes.ToArray();
    }
}
