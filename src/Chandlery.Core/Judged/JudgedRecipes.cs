using System.Collections.Concurrent;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Judged;

/// <summary>
/// Composes and judges a recipe once for all that is poured of it: a maker fills one blend into many vessels, and a recipe has shares
/// only. May be asked from several threads.
/// </summary>
internal sealed class JudgedRecipes
{
    // Enough for neighbours in a folder to find each other; thousands of different recipes take no more memory than these.
    private const int MostKept = 256;

    private readonly ConcurrentDictionary<RecipeKey, JudgedRecipe> known = new();
    private int made;

    /// <summary>The recipe, composed.</summary>
    /// <param name="recipe">Its shares.</param>
    /// <param name="liquid">What was measured of a liquid; null for solids.</param>
    public JudgedRecipe Of(Recipe recipe, LiquidFacts? liquid) => known.GetOrAdd(new RecipeKey(recipe, liquid), _ => Make(recipe, liquid));

    private JudgedRecipe Make(Recipe recipe, LiquidFacts? liquid)
    {
        if (Interlocked.Increment(ref made) % MostKept == 0)
        {
            known.Clear();
        }

        return new JudgedRecipe(Composer.Compose(recipe) with { Liquid = liquid });
    }
}
