namespace LabVolatility.Laboratory.People;

/// <summary>What is needed to open an account.</summary>
/// <param name="UserName">What the person signs in with.</param>
/// <param name="FullName">The name as it goes into records and certificates.</param>
/// <param name="Roles">At least one for a person.</param>
/// <param name="IsService">The account of a program: owns keys, never signs in.</param>
public sealed record NewPerson(string UserName, string FullName, Roles Roles, bool IsService = false);
