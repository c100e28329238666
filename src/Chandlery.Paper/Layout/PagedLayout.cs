using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Layout;

/// <summary>A document on pages.</summary>
/// <param name="Pages">The pages.</param>
/// <param name="LastFilled">How much of the last page's height is used, 0 to 1.</param>
internal sealed record PagedLayout(IReadOnlyList<Scene> Pages, double LastFilled);
