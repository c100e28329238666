using Chandlery.Paper.Designs;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>An area that a PDF fills.</summary>
/// <param name="Bounds">The box around it, millimetres from the top left of the page.</param>
/// <param name="Colour">Its colour.</param>
internal sealed record PrintedArea(Box Bounds, PrintedColour Colour);
