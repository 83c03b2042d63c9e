using LabVolatility.Core.Methods;

namespace LabVolatility.Laboratory.Samples;

/// <summary>A test that every sample of a grade is assigned.</summary>
/// <param name="Method">Designation, such as "ASTM D5191".</param>
/// <param name="Authorities">Whose correlations are reported from the total pressure.</param>
/// <param name="Duplicate">True when a second container is always measured.</param>
/// <param name="HoursToResult">When the result is due after receipt.</param>
public sealed record GradeTest(string Method, IReadOnlyList<Authority> Authorities, bool Duplicate, int HoursToResult);
