using Chandlery.Paper.Blocks;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>How a name is to be set.</summary>
/// <param name="Text">The name.</param>
/// <param name="Room">Where it may stand, from the top of its capitals to its last baseline.</param>
/// <param name="LargestMm">Largest type size.</param>
/// <param name="MostLines">Most lines.</param>
/// <param name="Leading">Distance of lines in type sizes.</param>
/// <param name="Align">Alignment.</param>
/// <param name="Ink">Ink.</param>
internal sealed record NameOrder(string Text, Box Room, double LargestMm, int MostLines, double Leading, Align Align, Ink Ink)
{
    /// <summary>True when it stands at the foot of its room, false for the top.</summary>
    public bool StandsAtFoot { get; init; } = true;
}
