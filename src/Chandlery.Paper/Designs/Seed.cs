namespace Chandlery.Paper.Designs;

/// <summary>
/// Numbers that look random and are the same for the same name every time and on every machine (FNV-1a and SplitMix64, both in the
/// public domain).
/// </summary>
internal sealed class Seed
{
    private ulong state;

    /// <summary>Starts from a name.</summary>
    public Seed(string name)
    {
        state = 14695981039346656037;
        foreach (char sign in name)
        {
            state = (state ^ sign) * 1099511628211;
        }
    }

    /// <summary>The next number, from 0 to below 1.</summary>
    public double Next()
    {
        state += 0x9E3779B97F4A7C15;
        ulong mixed = state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        mixed ^= mixed >> 31;
        return (mixed >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>The next number between two others.</summary>
    public double Between(double low, double high) => low + ((high - low) * Next());
}
