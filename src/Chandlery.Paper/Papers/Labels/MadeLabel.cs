using Chandlery.Paper.Designs;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A label that fits.</summary>
/// <param name="Document">Its pages.</param>
/// <param name="LeftOff">Codes of statements that are left off because the package is small.</param>
/// <param name="Panel">Where the legal panel lies on the last page; null where the pages are nothing else.</param>
public sealed record MadeLabel(PaperDocument Document, IReadOnlySet<string> LeftOff, Box? Panel = null) : MadePaper(Document, []);
