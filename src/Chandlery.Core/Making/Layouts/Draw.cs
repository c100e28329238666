namespace Chandlery.Core.Making.Layouts;

/// <summary>Numbers that look drawn by lot and are the same on every machine (xorshift, Marsaglia, J. Stat. Soft. 8/14, 2003).</summary>
internal sealed class Draw
{
    private ulong state = 88172645463325252;

    /// <summary>The next number, from 0 to below 1.</summary>
    public double Next()
    {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return (state >> 11) / (double)(1UL << 53);
    }
}
