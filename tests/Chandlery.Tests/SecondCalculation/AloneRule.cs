namespace Chandlery.Tests.SecondCalculation;

/// <summary>A general limit of a class for which each ingredient is judged alone, never summed.</summary>
/// <param name="Class">The class.</param>
/// <param name="Ingredient">Category of the ingredient.</param>
/// <param name="Mixture">Category that the mixture gets.</param>
/// <param name="FromPercent">From this share on.</param>
internal sealed record AloneRule(string Class, string Ingredient, string Mixture, double FromPercent);
