using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A supplemental statement that an ingredient calls for, whatever the class of the mixture.</summary>
/// <param name="Statement">The statement.</param>
/// <param name="Cas">CAS numbers of the ingredient.</param>
/// <param name="From">The share of the mixture from which it is due.</param>
/// <param name="InForce">When it is due.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Stricter">Why it is printed although the law may be read without it; empty where nobody doubts it.</param>
public sealed record IngredientStatement(
    StatementCode Statement,
    IReadOnlyList<string> Cas,
    MassPercent From,
    InForce InForce,
    Citation Clause,
    string Stricter
);
