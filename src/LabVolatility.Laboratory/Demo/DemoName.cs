using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Ids and scatter that follow from a name alone: made again, the demo comes out the same.</summary>
internal static class DemoName
{
    /// <summary>The id of the command of that name.</summary>
    public static Guid Id(string name) => new(Hash(name).AsSpan(0, 16));

    /// <summary>A figure around zero with a standard deviation of one and never beyond 2.2, as measurements scatter.</summary>
    /// <remarks>The sum of six even figures, scaled: the middle of a normal distribution without its tails.</remarks>
    public static decimal Scatter(string name)
    {
        const decimal SpreadOfSix = 0.7071m;
        const decimal Furthest = 2.2m;
        var bytes = Hash("scatter " + name).AsSpan();
        var sum = -3m;
        for (var i = 0; i < 6; i++)
            sum += BinaryPrimitives.ReadUInt32LittleEndian(bytes[(i * 4)..]) / (decimal)uint.MaxValue;
        return Math.Clamp(sum / SpreadOfSix, -Furthest, Furthest);
    }

    private static byte[] Hash(string name) => SHA256.HashData(Encoding.UTF8.GetBytes("labvolatility-demo-1 " + name));
}
