using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Layout;

/// <summary>A piece that stays together on a line.</summary>
/// <param name="Text">Text without surrounding blanks.</param>
/// <param name="Weight">Weight.</param>
/// <param name="SpaceBefore">Whether a blank separates it from the piece before.</param>
internal sealed record Piece(string Text, Weight Weight, bool SpaceBefore)
{
    /// <summary>True for what follows the piece before without a blank in another weight, such as a comma behind a bold name.</summary>
    public bool IsTied { get; init; }

    /// <summary>True for what a word goes on with behind a place where it may be broken: a line that ends before it ends in a hyphen.</summary>
    public bool IsSoft { get; init; }

    /// <summary>Width as a multiple of the type size; a layout is tried at many sizes, and shaping does not depend on them.</summary>
    public double WidthEm { get; } = LineBreaker.Width(Text, Weight, 1);

    /// <summary>Width of the blank before it as a multiple of the type size, where it does not begin a line; 0 when none separates it.</summary>
    public double BlankEm { get; } = SpaceBefore ? Face.Of(Weight).BlankWidth : 0;
}
