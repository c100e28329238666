namespace Chandlery.Core.Declared;

/// <summary>How a declaration was written: what its maker confirms, and figures that can be read in two ways.</summary>
/// <param name="Confirmed">Names of fields that are meant as they stand.</param>
/// <param name="Marks">Figures whose point could be a thousands mark.</param>
public sealed record Writing(IReadOnlyList<string> Confirmed, IReadOnlyList<Doubt> Marks)
{
    /// <summary>Nothing confirmed and nothing to ask.</summary>
    public static Writing Plain { get; } = new([], []);
}
