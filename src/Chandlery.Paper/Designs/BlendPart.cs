using Chandlery.Core.Declared;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Designs;

/// <summary>An oil as an ornament draws it.</summary>
/// <param name="Name">Its name, in small letters.</param>
/// <param name="Note">The note that it plays.</param>
/// <param name="Share">Its share, 0 to 1: of the blend, or a figure from its name where the recipe stays the maker's.</param>
/// <param name="Ink">Its colour.</param>
public sealed record BlendPart(string Name, Scent Note, double Share, Ink Ink);
