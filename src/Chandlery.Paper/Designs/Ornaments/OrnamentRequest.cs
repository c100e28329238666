namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>What an ornament is drawn for.</summary>
/// <param name="Room">Where it goes; it may run over the edges that lie on the front's own.</param>
/// <param name="Facts">The candle.</param>
/// <param name="Inks">The inks.</param>
/// <param name="Name">The candle's name as it was placed; null where the design places none.</param>
internal sealed record OrnamentRequest(Box Room, DesignFacts Facts, Palette Inks, PlacedName? Name)
{
    /// <summary>How far it goes on past the edges of its room, millimetres: past the bleed, or all over a label of another shape.</summary>
    public required double BeyondMm { get; init; }

    /// <summary>True to leave out words that the ornament would write.</summary>
    public bool IsPlain { get; init; }
}
