using System.Globalization;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Setup;

/// <summary>A test of a grade as typed.</summary>
public sealed class GradeTestEntry
{
    private const string UsualHours = "4";

    public string Method { get; set; } = TestMethods.All[0].Designation;

    /// <summary>Whose equations are reported, the first one first; an empty place is none.</summary>
    public List<string> Authorities { get; } = [TestMethods.All[0].DefaultAuthority.Text()];

    public bool Duplicate { get; set; }

    public string? Hours { get; set; } = UsualHours;

    /// <summary>What the method knows, to pick from.</summary>
    public IReadOnlyList<Authority> Known => TestMethods.TryFind(Method, out var method) ? method.Authorities : [];

    public static GradeTestEntry Of(GradeTest test)
    {
        var entry = new GradeTestEntry
        {
            Method = test.Method,
            Duplicate = test.Duplicate,
            Hours = test.HoursToResult.ToString(CultureInfo.InvariantCulture),
        };
        entry.Authorities.Clear();
        entry.Authorities.AddRange(test.Authorities.Select(a => a.Text()));
        return entry;
    }

    /// <summary>The authority in a place, "" for none.</summary>
    public string At(int place) => place < Authorities.Count ? Authorities[place] : "";

    /// <summary>Puts an authority into a place, and takes it from any other.</summary>
    public void Put(int place, string? authority)
    {
        while (Authorities.Count <= place)
            Authorities.Add("");
        for (var i = 0; i < Authorities.Count; i++)
            Authorities[i] = Authorities[i] == authority ? "" : Authorities[i];
        Authorities[place] = authority ?? "";
    }

    /// <summary>Takes another method with the equation it uses when none is named.</summary>
    public void Take(string? method)
    {
        if (!TestMethods.TryFind(method, out var found))
            return;
        Method = found.Designation;
        Authorities.Clear();
        Authorities.Add(found.DefaultAuthority.Text());
    }

    /// <summary>The test; hours that can't be read are 0, which the laboratory refuses.</summary>
    public GradeTest Read() => new(
        Method,
        [.. Authorities.Select(a => Core.Methods.Authorities.TryParse(a, out var authority) ? authority : (Authority?)null).OfType<Authority>()],
        Duplicate,
        int.TryParse(Hours?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var hours) ? hours : 0);
}
