namespace Chandlery.Yaml;

/// <summary>Finds what a user most likely meant.</summary>
public static class Suggestion
{
    /// <summary>The nearest of <paramref name="known"/> to <paramref name="written"/>, or null when none is near.</summary>
    public static string? Nearest(string written, IEnumerable<string> known)
    {
        string? best = null;
        int bestDistance = Math.Max(2, written.Length / 3) + 1;
        foreach (string candidate in known)
        {
            int distance = Distance(written, candidate, bestDistance);
            if (distance < bestDistance)
            {
                bestDistance = distance;
                best = candidate;
            }
        }

        return best;
    }

    /// <summary>The nearest as a question, or nothing when none is near.</summary>
    public static string DidYouMean(string written, IEnumerable<string> known) =>
        Nearest(written, known) is { } near ? $"Did you mean '{near}'?" : "";

    // Levenshtein distance by rows; gives up beyond the limit so that giant input stays cheap.
    private static int Distance(string a, string b, int limit)
    {
        if (Math.Abs(a.Length - b.Length) >= limit)
        {
            return limit;
        }

        int[] row = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
        {
            row[j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int above = row[j];
                int change = diagonal + (char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(above, row[j - 1]) + 1);
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
