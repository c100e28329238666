using Chandlery.Core.Hazards;

namespace Chandlery.Core.Labelled;

/// <summary>Something on the label, or left off it, with the reason.</summary>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
public abstract record LabelChoice(string Because, Citation Clause)
{
    /// <summary>What is chosen, as its code or word.</summary>
    public abstract string Text { get; }
}
