using Chandlery.Core.Hazards;
using Chandlery.Core.Law;

namespace Chandlery.Core.Labelled;

/// <summary>What the vessel itself bears where the label stands elsewhere, or may be left off.</summary>
/// <param name="Bears">What it bears.</param>
/// <param name="Pictograms">Its pictograms.</param>
/// <param name="Because">The reason.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record InnerPackage(IReadOnlyList<InnerElement> Bears, IReadOnlyList<Pictogram> Pictograms, string Because, Citation Clause);
