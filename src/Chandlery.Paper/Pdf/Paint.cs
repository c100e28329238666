namespace Chandlery.Paper.Pdf;

/// <summary>An ink as operators of a content stream.</summary>
/// <param name="Fill">Makes it the colour of areas and letters.</param>
/// <param name="Stroke">Makes it the colour of lines.</param>
/// <param name="Overprints">Whether what lies below is kept on the other plates.</param>
internal sealed record Paint(string Fill, string Stroke, bool Overprints);
