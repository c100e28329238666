using System.Data.Common;
using System.Globalization;
using System.Text.Json;

namespace Chandlery.Register;

/// <summary>An entry as it stands in the register: what is signed, letter by letter, and the hash that signs it.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">When it was made, in UTC.</param>
/// <param name="By">Who made it.</param>
/// <param name="Content">What it says, as JSON.</param>
/// <param name="PreviousHash">Hash of the entry before; zeros for the first.</param>
/// <param name="Hash">Hash of all that, with the hash of the one before.</param>
internal sealed record SignedEntry(long Number, string At, string By, string Content, string PreviousHash, string Hash)
{
    /// <summary>What the first entry follows.</summary>
    public static readonly string FirstPreviousHash = new('0', 64);

    /// <summary>The columns that <see cref="Read"/> reads.</summary>
    public const string Columns = "number, at, by, content, previous_hash, hash";

    /// <summary>Whether the hash is the one of what it signs.</summary>
    public bool IsWhole => Hash == HashOf(Number, At, By, Content, PreviousHash);

    /// <summary>Signs an entry.</summary>
    public static SignedEntry Sign(long number, string at, string by, string content, string previous) =>
        new(number, at, by, content, previous, HashOf(number, at, by, content, previous));

    /// <summary>The entry of a row.</summary>
    public static SignedEntry Read(DbDataReader row) =>
        new(
            row.GetInt64(0),
            RegisterStore.Text(row, 1),
            RegisterStore.Text(row, 2),
            RegisterStore.Text(row, 3),
            RegisterStore.Text(row, 4),
            RegisterStore.Text(row, 5)
        );

    /// <summary>What it says; null when that cannot be read.</summary>
    public RegisterContent? Says()
    {
        try
        {
            RegisterContent? content = JsonSerializer.Deserialize(Content, RegisterJson.Default.RegisterContent);
            return
                content
                    is {
                        Batch: not null,
                        Subject: not null,
                        Result: not null,
                        Declarations: not null,
                        Oils: not null,
                        Substances: not null,
                        Documents: not null
                    }
                ? content
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The entry with what it says.</summary>
    public RegisterEntry With(RegisterContent content) => new(Number, At, By, content, PreviousHash, Hash);

    // Lengths before the parts keep two different entries from reading the same.
    private static string HashOf(long number, string at, string by, string content, string previous) =>
        RegisterFile.Sha256(
            string.Concat(new[] { number.ToString(CultureInfo.InvariantCulture), at, by, content, previous }.Select(p => $"{p.Length}:{p}"))
        );
}
