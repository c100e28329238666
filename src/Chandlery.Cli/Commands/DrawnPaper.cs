using Chandlery.Core.Law;
using Chandlery.Files;
using Chandlery.Paper.Papers;

namespace Chandlery.Cli.Commands;

/// <summary>What came of a paper that was asked for.</summary>
/// <param name="Paper">The kind.</param>
/// <param name="Language">The language that it was asked for in.</param>
/// <param name="Outcome">The paper, or why there is none.</param>
/// <param name="Files">Its files; none where there is no paper.</param>
internal sealed record DrawnPaper(PaperKind Paper, Language Language, PaperOutcome Outcome, IReadOnlyList<PendingFile> Files);
