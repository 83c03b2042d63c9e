using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api;

/// <summary>The scope that an address asks for.</summary>
internal sealed record KeyScopeNeeded(KeyScopes Scope);
