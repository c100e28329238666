using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>A name that was set, with the room that it takes.</summary>
/// <param name="Lines">Its lines.</param>
/// <param name="Box">From the top of its first line's capitals to the last baseline.</param>
internal sealed record PlacedName(IReadOnlyList<TextItem> Lines, Box Box);
