using System.Globalization;
using Chandlery.Files;

namespace Chandlery.Register;

/// <summary>
/// The witness: a small file beside the register that names its last entry. Entries cut off the end, or all of them, show against it.
/// Whoever can write both files can forge both: keep a copy of its line elsewhere.
/// </summary>
/// <param name="Number">Number of the last entry.</param>
/// <param name="Hash">Its hash.</param>
internal sealed record Witness(long Number, string Hash)
{
    /// <summary>Name of the witness of a register.</summary>
    public static string FileOf(string register) => register + ".head";

    /// <summary>The witness in a file; null when there is none that can be read.</summary>
    public static Witness? Of(string file) =>
        File.Exists(file)
        && File.ReadAllText(file).Split(' ', StringSplitOptions.TrimEntries) is [var number, { Length: 64 } hash]
        && long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out long last)
            ? new Witness(last, hash)
            : null;

    /// <summary>Writes the witness of a register that has no entry yet: it lags behind whatever is entered, and belies nothing.</summary>
    public static void Begin(string file) => Write(file, (0, SignedEntry.FirstPreviousHash));

    /// <summary>Writes the witness, whole or not at all.</summary>
    public static void Write(string file, (long Number, string Hash) head) =>
        AtomicFile.Write(file, string.Create(CultureInfo.InvariantCulture, $"{head.Number} {head.Hash}\n"));
}
