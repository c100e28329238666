namespace Chandlery.Paper.Pdf;

/// <summary>Matrices of three rows and columns.</summary>
internal static class Matrix
{
    /// <summary>One after the other.</summary>
    public static double[,] Multiply(double[,] one, double[,] other)
    {
        var product = new double[3, 3];
        for (int i = 0; i < 3; i++)
        {
            for (int k = 0; k < 3; k++)
            {
                product[i, k] = (one[i, 0] * other[0, k]) + (one[i, 1] * other[1, k]) + (one[i, 2] * other[2, k]);
            }
        }

        return product;
    }

    /// <summary>What becomes of a column.</summary>
    public static double[] Multiply(double[,] matrix, double[] column) =>
        [.. Enumerable.Range(0, 3).Select(i => (matrix[i, 0] * column[0]) + (matrix[i, 1] * column[1]) + (matrix[i, 2] * column[2]))];

    /// <summary>One that stretches.</summary>
    public static double[,] Diagonal(double[] factors) =>
        new[,]
        {
            { factors[0], 0, 0 },
            { 0, factors[1], 0 },
            { 0, 0, factors[2] },
        };

    /// <summary>The one that takes back what this one does (by cofactors).</summary>
    public static double[,] Inverse(double[,] m)
    {
        var inverse = new double[3, 3];
        double whole = 0;
        for (int i = 0; i < 3; i++)
        {
            whole += m[0, i] * Cofactor(m, 0, i);
        }

        for (int i = 0; i < 3; i++)
        {
            for (int k = 0; k < 3; k++)
            {
                inverse[k, i] = Cofactor(m, i, k) / whole;
            }
        }

        return inverse;
    }

    private static double Cofactor(double[,] m, int row, int column) =>
        (m[(row + 1) % 3, (column + 1) % 3] * m[(row + 2) % 3, (column + 2) % 3])
        - (m[(row + 1) % 3, (column + 2) % 3] * m[(row + 2) % 3, (column + 1) % 3]);
}
