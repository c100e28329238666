using System.Text.RegularExpressions;
using Chandlery.Files;

namespace Chandlery.Workbench.Keeping;

/// <summary>Files that declarations name: a logo, a font, photographs.</summary>
internal static partial class Attachments
{
    /// <summary>The largest that is taken, bytes: what a label or a record needs is far smaller.</summary>
    public const int Largest = 20_000_000;

    private const int LongestName = 60;

    /// <summary>Puts a file into a folder. Nothing is overwritten: where another file has the name, this one gets a number.</summary>
    /// <param name="folder">The folder, a full path.</param>
    /// <param name="name">What the file was called where it came from.</param>
    /// <param name="content">What is in it.</param>
    /// <returns>What it is called there.</returns>
    public static string Keep(string folder, string name, byte[] content)
    {
        string ending = Path.GetExtension(name).ToLowerInvariant();
        string plain = NotPlain().Replace(Path.GetFileNameWithoutExtension(name), "-").Trim('-', '.');
        string first = plain.Length == 0 ? "file" : plain[..Math.Min(plain.Length, LongestName)];
        for (int n = 1; ; n++)
        {
            string called = n == 1 ? first + ending : $"{first}-{n}{ending}";
            string path = Path.Combine(folder, called);
            if (!Path.Exists(path))
            {
                AtomicFile.Write(path, content);
                return called;
            }

            if (File.Exists(path) && new FileInfo(path).Length == content.Length && File.ReadAllBytes(path).AsSpan().SequenceEqual(content))
            {
                return called;
            }
        }
    }

    [GeneratedRegex(@"[^\p{L}\p{Nd}_.]+")]
    private static partial Regex NotPlain();
}
