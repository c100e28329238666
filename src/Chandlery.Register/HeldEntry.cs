using System.Data.Common;

namespace Chandlery.Register;

/// <summary>An entry with the columns that are searched beside it.</summary>
/// <param name="Signed">What is signed.</param>
/// <param name="Batch">The batch that is searched.</param>
/// <param name="Subject">The subject that is searched.</param>
internal sealed record HeldEntry(SignedEntry Signed, string Batch, string Subject)
{
    /// <summary>The columns that <see cref="Read"/> reads.</summary>
    public const string Columns = $"{SignedEntry.Columns}, batch, subject";

    /// <summary>The entry of a row.</summary>
    public static HeldEntry Read(DbDataReader row) => new(SignedEntry.Read(row), RegisterStore.Text(row, 6), RegisterStore.Text(row, 7));

    /// <summary>Whether it is searched by the batch and subject that are signed.</summary>
    public bool SaysOf(RegisterContent content) => Batch == content.Batch && Subject == content.Subject;
}
