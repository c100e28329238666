using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>An ornament that is computed from a candle.</summary>
internal interface IOrnament
{
    /// <summary>The word by which templates ask for it.</summary>
    string Kind { get; }

    /// <summary>Draws it, from back to front.</summary>
    IEnumerable<SceneItem> Draw(OrnamentRequest request);
}
