using Chandlery.Register;

namespace Chandlery.Cli.Commands;

/// <summary>The first of many entries.</summary>
/// <param name="found">All that were found.</param>
/// <param name="most">How many at most; null for all.</param>
internal sealed class RegisterPage(IEnumerable<RegisterEntry> found, int? most)
{
    /// <summary>The number behind which the next page begins; null when this was the last. Known when the entries were gone through.</summary>
    public long? Next { get; private set; }

    /// <summary>The entries of the page.</summary>
    public IEnumerable<RegisterEntry> Entries()
    {
        int given = 0;
        long last = 0;
        foreach (RegisterEntry entry in found)
        {
            if (given == most)
            {
                Next = last;
                yield break;
            }

            given++;
            last = entry.Number;
            yield return entry;
        }
    }
}
