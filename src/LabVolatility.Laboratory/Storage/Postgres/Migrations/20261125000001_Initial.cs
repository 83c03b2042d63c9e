using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace LabVolatility.Laboratory.Storage.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class Initial : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "audit_records",
                columns: table => new
                {
                    sequence = table.Column<long>(type: "bigint", nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    actor_id = table.Column<Guid>(type: "uuid", nullable: true),
                    actor = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    origin = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    action = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    subject = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    subject_id = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    before = table.Column<string>(type: "text", nullable: true),
                    after = table.Column<string>(type: "text", nullable: true),
                    reason = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    build = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    previous_hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_audit_records", x => x.sequence);
                });

            migrationBuilder.CreateTable(
                name: "commands",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    subject = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_commands", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "counters",
                columns: table => new
                {
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    value = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_counters", x => x.name);
                });

            migrationBuilder.CreateTable(
                name: "data_protection_keys",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    friendly_name = table.Column<string>(type: "text", nullable: true),
                    xml = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_data_protection_keys", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "grades",
                columns: table => new
                {
                    code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    kind = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    state = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    tests = table.Column<string>(type: "text", nullable: false),
                    rule = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    confidence = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    results_in_all = table.Column<int>(type: "integer", nullable: false),
                    tree = table.Column<string>(type: "text", nullable: false),
                    parties = table.Column<string>(type: "text", nullable: false),
                    active = table.Column<bool>(type: "boolean", nullable: false),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_grades", x => x.code);
                });

            migrationBuilder.CreateTable(
                name: "instruments",
                columns: table => new
                {
                    code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    serial_number = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    location = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    methods = table.Column<string>(type: "text", nullable: false),
                    in_service = table.Column<bool>(type: "boolean", nullable: false),
                    out_of_service_reason = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    calibrated_on = table.Column<DateOnly>(type: "date", nullable: true),
                    calibration_due_on = table.Column<DateOnly>(type: "date", nullable: true),
                    low_kpa = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    high_kpa = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_instruments", x => x.code);
                });

            migrationBuilder.CreateTable(
                name: "laboratory_settings",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    place = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    time_zone = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    shift_starts = table.Column<string>(type: "text", nullable: false),
                    retain_days = table.Column<int>(type: "integer", nullable: false),
                    public_address = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    emergency_numbers = table.Column<string>(type: "text", nullable: true),
                    is_demo = table.Column<bool>(type: "boolean", nullable: false),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_laboratory_settings", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "people",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    full_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    roles = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    active = table.Column<bool>(type: "boolean", nullable: false),
                    is_service = table.Column<bool>(type: "boolean", nullable: false),
                    created_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    password_set_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    theme = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    user_name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    normalized_user_name = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    email = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    normalized_email = table.Column<string>(type: "character varying(256)", maxLength: 256, nullable: true),
                    email_confirmed = table.Column<bool>(type: "boolean", nullable: false),
                    password_hash = table.Column<string>(type: "text", nullable: true),
                    security_stamp = table.Column<string>(type: "text", nullable: true),
                    concurrency_stamp = table.Column<string>(type: "text", nullable: true),
                    phone_number = table.Column<string>(type: "text", nullable: true),
                    phone_number_confirmed = table.Column<bool>(type: "boolean", nullable: false),
                    two_factor_enabled = table.Column<bool>(type: "boolean", nullable: false),
                    lockout_end = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    lockout_enabled = table.Column<bool>(type: "boolean", nullable: false),
                    access_failed_count = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_people", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "tanks",
                columns: table => new
                {
                    code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    grade_code = table.Column<string>(type: "character varying(40)", nullable: true),
                    capacity_cubic_metres = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_tanks", x => x.code);
                    table.ForeignKey(
                        name: "FK_tanks_grades_grade_code",
                        column: x => x.grade_code,
                        principalTable: "grades",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "correlation_entries",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    number = table.Column<int>(type: "integer", nullable: false),
                    method = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    total_slope = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    gas_slope = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    constant = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    unit = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    from = table.Column<DateOnly>(type: "date", nullable: false),
                    until = table.Column<DateOnly>(type: "date", nullable: true),
                    source = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    drafted_by = table.Column<Guid>(type: "uuid", nullable: false),
                    drafted_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    approved_by = table.Column<Guid>(type: "uuid", nullable: true),
                    approved_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    withdrawn_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_correlation_entries", x => x.id);
                    table.ForeignKey(
                        name: "FK_correlation_entries_people_approved_by",
                        column: x => x.approved_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_correlation_entries_people_drafted_by",
                        column: x => x.drafted_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "fact_confirmations",
                columns: table => new
                {
                    key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    confirmed_by = table.Column<Guid>(type: "uuid", nullable: false),
                    confirmed_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    source = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_fact_confirmations", x => x.key);
                    table.ForeignKey(
                        name: "FK_fact_confirmations_people_confirmed_by",
                        column: x => x.confirmed_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "interface_keys",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    owner_id = table.Column<Guid>(type: "uuid", nullable: false),
                    scopes = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    prefix = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    created_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    expires_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    revoked_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    last_used_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_interface_keys", x => x.id);
                    table.ForeignKey(
                        name: "FK_interface_keys_people_owner_id",
                        column: x => x.owner_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "laboratory_areas",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    derogation = table.Column<bool>(type: "boolean", nullable: false),
                    calendar = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    effective_from = table.Column<DateOnly>(type: "date", nullable: false),
                    effective_until = table.Column<DateOnly>(type: "date", nullable: true),
                    drafted_by = table.Column<Guid>(type: "uuid", nullable: false),
                    drafted_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    approved_by = table.Column<Guid>(type: "uuid", nullable: true),
                    approved_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    withdrawn_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_laboratory_areas", x => x.id);
                    table.ForeignKey(
                        name: "FK_laboratory_areas_people_approved_by",
                        column: x => x.approved_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_laboratory_areas_people_drafted_by",
                        column: x => x.drafted_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "laboratory_limits",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    key = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    area_code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    grade_code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    point = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true),
                    quantity = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    correlation = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    minimum = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    maximum = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    unit = table.Column<string>(type: "character varying(16)", maxLength: 16, nullable: false),
                    digits = table.Column<int>(type: "integer", nullable: false),
                    methods = table.Column<string>(type: "text", nullable: false),
                    standing = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    required = table.Column<bool>(type: "boolean", nullable: false),
                    source = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    effective_from = table.Column<DateOnly>(type: "date", nullable: false),
                    effective_until = table.Column<DateOnly>(type: "date", nullable: true),
                    drafted_by = table.Column<Guid>(type: "uuid", nullable: false),
                    drafted_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    approved_by = table.Column<Guid>(type: "uuid", nullable: true),
                    approved_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    withdrawn_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_laboratory_limits", x => x.id);
                    table.ForeignKey(
                        name: "FK_laboratory_limits_people_approved_by",
                        column: x => x.approved_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_laboratory_limits_people_drafted_by",
                        column: x => x.drafted_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "on_call_turns",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    person_id = table.Column<Guid>(type: "uuid", nullable: false),
                    phone = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    from = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    until = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    entered_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    entered_by = table.Column<Guid>(type: "uuid", nullable: false),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_on_call_turns", x => x.id);
                    table.ForeignKey(
                        name: "FK_on_call_turns_people_entered_by",
                        column: x => x.entered_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_on_call_turns_people_person_id",
                        column: x => x.person_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "person_claims",
                columns: table => new
                {
                    id = table.Column<int>(type: "integer", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    user_id = table.Column<Guid>(type: "uuid", nullable: false),
                    claim_type = table.Column<string>(type: "text", nullable: true),
                    claim_value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_person_claims", x => x.id);
                    table.ForeignKey(
                        name: "FK_person_claims_people_user_id",
                        column: x => x.user_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "person_logins",
                columns: table => new
                {
                    login_provider = table.Column<string>(type: "text", nullable: false),
                    provider_key = table.Column<string>(type: "text", nullable: false),
                    provider_display_name = table.Column<string>(type: "text", nullable: true),
                    user_id = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_person_logins", x => new { x.login_provider, x.provider_key });
                    table.ForeignKey(
                        name: "FK_person_logins_people_user_id",
                        column: x => x.user_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "person_tokens",
                columns: table => new
                {
                    user_id = table.Column<Guid>(type: "uuid", nullable: false),
                    login_provider = table.Column<string>(type: "text", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    value = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_person_tokens", x => new { x.user_id, x.login_provider, x.name });
                    table.ForeignKey(
                        name: "FK_person_tokens_people_user_id",
                        column: x => x.user_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "precision_entries",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    method = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    edition = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    quantity = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    container = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: true),
                    container_millilitres = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    low_kpa = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    high_kpa = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    unit = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    repeatability_constant = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    repeatability_slope = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    reproducibility_constant = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    reproducibility_slope = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    source = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    drafted_by = table.Column<Guid>(type: "uuid", nullable: false),
                    drafted_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    approved_by = table.Column<Guid>(type: "uuid", nullable: true),
                    approved_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    withdrawn_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_precision_entries", x => x.id);
                    table.ForeignKey(
                        name: "FK_precision_entries_people_approved_by",
                        column: x => x.approved_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_precision_entries_people_drafted_by",
                        column: x => x.drafted_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "verifications",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    instrument_code = table.Column<string>(type: "character varying(40)", nullable: false),
                    on = table.Column<DateOnly>(type: "date", nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: false),
                    fluid = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    lot = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    typed = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    reading_kpa = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    band_low_kpa = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    band_high_kpa = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    in_band = table.Column<bool>(type: "boolean", nullable: false),
                    note = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_verifications", x => x.id);
                    table.ForeignKey(
                        name: "FK_verifications_instruments_instrument_code",
                        column: x => x.instrument_code,
                        principalTable: "instruments",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_verifications_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "batches",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    grade_code = table.Column<string>(type: "character varying(40)", nullable: false),
                    state = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    tank_code = table.Column<string>(type: "character varying(40)", nullable: true),
                    cubic_metres = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    ethanol_percent = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    ethanol_method = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    destinations = table.Column<string>(type: "text", nullable: false),
                    from = table.Column<DateOnly>(type: "date", nullable: false),
                    until = table.Column<DateOnly>(type: "date", nullable: false),
                    created_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    created_by = table.Column<Guid>(type: "uuid", nullable: false),
                    needed_by = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    note = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_batches", x => x.id);
                    table.ForeignKey(
                        name: "FK_batches_grades_grade_code",
                        column: x => x.grade_code,
                        principalTable: "grades",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_batches_people_created_by",
                        column: x => x.created_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_batches_tanks_tank_code",
                        column: x => x.tank_code,
                        principalTable: "tanks",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "sample_points",
                columns: table => new
                {
                    code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    tank_code = table.Column<string>(type: "character varying(40)", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_sample_points", x => x.code);
                    table.ForeignKey(
                        name: "FK_sample_points_tanks_tank_code",
                        column: x => x.tank_code,
                        principalTable: "tanks",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "tank_movements",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    tank_code = table.Column<string>(type: "character varying(40)", nullable: false),
                    kind = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    cubic_metres = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    note = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    recorded_by = table.Column<Guid>(type: "uuid", nullable: false),
                    recorded_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_tank_movements", x => x.id);
                    table.ForeignKey(
                        name: "FK_tank_movements_people_recorded_by",
                        column: x => x.recorded_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_tank_movements_tanks_tank_code",
                        column: x => x.tank_code,
                        principalTable: "tanks",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "assessments",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: false),
                    outcome = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    fails_legal_limit = table.Column<bool>(type: "boolean", nullable: false),
                    evidence = table.Column<string>(type: "text", nullable: false),
                    evidence_hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    build = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_assessments", x => x.id);
                    table.ForeignKey(
                        name: "FK_assessments_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_assessments_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "party_results",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: false),
                    kind = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    party = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    laboratory = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    sample_number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    quantity = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    correlation = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    method = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    edition = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: true),
                    typed = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    value = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    unit = table.Column<string>(type: "character varying(16)", maxLength: 16, nullable: false),
                    count = table.Column<int>(type: "integer", nullable: false),
                    hazy = table.Column<bool>(type: "boolean", nullable: false),
                    measured_on = table.Column<DateOnly>(type: "date", nullable: false),
                    reference = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    seals = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    entered_by = table.Column<Guid>(type: "uuid", nullable: false),
                    entered_by_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    entered_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_party_results", x => x.id);
                    table.ForeignKey(
                        name: "FK_party_results_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_party_results_people_entered_by",
                        column: x => x.entered_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "samples",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    grade_code = table.Column<string>(type: "character varying(40)", nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: true),
                    tank_code = table.Column<string>(type: "character varying(40)", nullable: true),
                    sample_point_code = table.Column<string>(type: "character varying(40)", nullable: true),
                    level = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    state = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    sampled_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    sampled_by = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    registered_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    registered_by = table.Column<Guid>(type: "uuid", nullable: false),
                    received_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    received_by = table.Column<Guid>(type: "uuid", nullable: true),
                    verdict = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    verdict_note = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    verdict_by = table.Column<Guid>(type: "uuid", nullable: true),
                    note = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    resample_of = table.Column<Guid>(type: "uuid", nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_samples", x => x.id);
                    table.ForeignKey(
                        name: "FK_samples_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_samples_grades_grade_code",
                        column: x => x.grade_code,
                        principalTable: "grades",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_samples_people_received_by",
                        column: x => x.received_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_samples_people_registered_by",
                        column: x => x.registered_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_samples_people_verdict_by",
                        column: x => x.verdict_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_samples_sample_points_sample_point_code",
                        column: x => x.sample_point_code,
                        principalTable: "sample_points",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_samples_samples_resample_of",
                        column: x => x.resample_of,
                        principalTable: "samples",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_samples_tanks_tank_code",
                        column: x => x.tank_code,
                        principalTable: "tanks",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "decisions",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: false),
                    sequence = table.Column<int>(type: "integer", nullable: false),
                    kind = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    assessment_id = table.Column<Guid>(type: "uuid", nullable: true),
                    evidence_hash = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: true),
                    person_id = table.Column<Guid>(type: "uuid", nullable: false),
                    person_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    person_roles = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    meaning = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    reason = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_decisions", x => x.id);
                    table.CheckConstraint("evidence_is_named", "kind NOT IN ('Release', 'Concession') OR (assessment_id IS NOT NULL AND evidence_hash IS NOT NULL)");
                    table.CheckConstraint("reason_is_due", "kind = 'Release' OR (reason IS NOT NULL AND trim(reason) <> '')");
                    table.ForeignKey(
                        name: "FK_decisions_assessments_assessment_id",
                        column: x => x.assessment_id,
                        principalTable: "assessments",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_decisions_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_decisions_people_person_id",
                        column: x => x.person_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "party_withdrawals",
                columns: table => new
                {
                    party_result_id = table.Column<Guid>(type: "uuid", nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: false),
                    by_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    reason = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_party_withdrawals", x => x.party_result_id);
                    table.ForeignKey(
                        name: "FK_party_withdrawals_party_results_party_result_id",
                        column: x => x.party_result_id,
                        principalTable: "party_results",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_party_withdrawals_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "assigned_tests",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    sample_id = table.Column<Guid>(type: "uuid", nullable: false),
                    method = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    authorities = table.Column<string>(type: "text", nullable: false),
                    wanted = table.Column<int>(type: "integer", nullable: false),
                    due_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    state = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    why = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_assigned_tests", x => x.id);
                    table.ForeignKey(
                        name: "FK_assigned_tests_samples_sample_id",
                        column: x => x.sample_id,
                        principalTable: "samples",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "blend_contents",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    sample_id = table.Column<Guid>(type: "uuid", nullable: false),
                    ethanol_percent = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    method = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_blend_contents", x => x.id);
                    table.ForeignKey(
                        name: "FK_blend_contents_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_blend_contents_samples_sample_id",
                        column: x => x.sample_id,
                        principalTable: "samples",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "containers",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    sample_id = table.Column<Guid>(type: "uuid", nullable: false),
                    number = table.Column<int>(type: "integer", nullable: false),
                    code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    kind = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    volume_millilitres = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    fill_percent = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    temperature_typed = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    temperature_celsius = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: true),
                    seal = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    seal_intact = table.Column<bool>(type: "boolean", nullable: true),
                    leaking = table.Column<bool>(type: "boolean", nullable: false),
                    condition = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    retain_until = table.Column<DateOnly>(type: "date", nullable: true),
                    disposed_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    version = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_containers", x => x.id);
                    table.ForeignKey(
                        name: "FK_containers_samples_sample_id",
                        column: x => x.sample_id,
                        principalTable: "samples",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "certificates",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    number = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: true),
                    decision_id = table.Column<Guid>(type: "uuid", nullable: true),
                    replaces_id = table.Column<Guid>(type: "uuid", nullable: true),
                    replaces_reason = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    check_code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    issued_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    issued_by = table.Column<Guid>(type: "uuid", nullable: false),
                    pdf = table.Column<byte[]>(type: "bytea", nullable: false),
                    sha256 = table.Column<string>(type: "character varying(64)", maxLength: 64, nullable: false),
                    content = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_certificates", x => x.id);
                    table.CheckConstraint("batch_with_its_decision", "(batch_id IS NULL) = (decision_id IS NULL)");
                    table.ForeignKey(
                        name: "FK_certificates_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_certificates_certificates_replaces_id",
                        column: x => x.replaces_id,
                        principalTable: "certificates",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_certificates_decisions_decision_id",
                        column: x => x.decision_id,
                        principalTable: "decisions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_certificates_people_issued_by",
                        column: x => x.issued_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "handover_notes",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: false),
                    decision_id = table.Column<Guid>(type: "uuid", nullable: true),
                    text = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    asked_of = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    due_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: true),
                    by = table.Column<Guid>(type: "uuid", nullable: false),
                    by_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_handover_notes", x => x.id);
                    table.ForeignKey(
                        name: "FK_handover_notes_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_handover_notes_decisions_decision_id",
                        column: x => x.decision_id,
                        principalTable: "decisions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_handover_notes_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "review_marks",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    decision_id = table.Column<Guid>(type: "uuid", nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    cause = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_review_marks", x => x.id);
                    table.ForeignKey(
                        name: "FK_review_marks_decisions_decision_id",
                        column: x => x.decision_id,
                        principalTable: "decisions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "bench_drafts",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    test_id = table.Column<Guid>(type: "uuid", nullable: false),
                    person_id = table.Column<Guid>(type: "uuid", nullable: false),
                    content = table.Column<string>(type: "text", nullable: false),
                    saved_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bench_drafts", x => x.id);
                    table.ForeignKey(
                        name: "FK_bench_drafts_assigned_tests_test_id",
                        column: x => x.test_id,
                        principalTable: "assigned_tests",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_bench_drafts_people_person_id",
                        column: x => x.person_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "steps_taken",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: false),
                    occasion = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    subject = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    place = table.Column<int>(type: "integer", nullable: false),
                    branch = table.Column<string>(type: "text", nullable: false),
                    kind = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    test_id = table.Column<Guid>(type: "uuid", nullable: true),
                    wanted = table.Column<int>(type: "integer", nullable: true),
                    samples = table.Column<string>(type: "text", nullable: false),
                    found = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    reason = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: false),
                    by_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_steps_taken", x => x.id);
                    table.ForeignKey(
                        name: "FK_steps_taken_assigned_tests_test_id",
                        column: x => x.test_id,
                        principalTable: "assigned_tests",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_steps_taken_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_steps_taken_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "container_openings",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    container_id = table.Column<Guid>(type: "uuid", nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: true),
                    why = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_container_openings", x => x.id);
                    table.ForeignKey(
                        name: "FK_container_openings_containers_container_id",
                        column: x => x.container_id,
                        principalTable: "containers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_container_openings_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "determinations",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    sample_id = table.Column<Guid>(type: "uuid", nullable: false),
                    container_id = table.Column<Guid>(type: "uuid", nullable: false),
                    test_id = table.Column<Guid>(type: "uuid", nullable: true),
                    method = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    edition = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    instrument_code = table.Column<string>(type: "character varying(40)", nullable: false),
                    measured_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    measured_by = table.Column<Guid>(type: "uuid", nullable: true),
                    recorded_by = table.Column<Guid>(type: "uuid", nullable: false),
                    recorded_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    origin = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    external_id = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    sole_test = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_determinations", x => x.id);
                    table.ForeignKey(
                        name: "FK_determinations_assigned_tests_test_id",
                        column: x => x.test_id,
                        principalTable: "assigned_tests",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_determinations_containers_container_id",
                        column: x => x.container_id,
                        principalTable: "containers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_determinations_instruments_instrument_code",
                        column: x => x.instrument_code,
                        principalTable: "instruments",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_determinations_people_measured_by",
                        column: x => x.measured_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_determinations_people_recorded_by",
                        column: x => x.recorded_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_determinations_samples_sample_id",
                        column: x => x.sample_id,
                        principalTable: "samples",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "hand_blends",
                columns: table => new
                {
                    sample_id = table.Column<Guid>(type: "uuid", nullable: false),
                    blendstock_id = table.Column<Guid>(type: "uuid", nullable: false),
                    blendstock_container_id = table.Column<Guid>(type: "uuid", nullable: false),
                    ethanol_lot = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    blendstock_volume = table.Column<string>(type: "text", nullable: false),
                    ethanol_volume = table.Column<string>(type: "text", nullable: false),
                    temperature = table.Column<string>(type: "text", nullable: false),
                    made_at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    made_by = table.Column<Guid>(type: "uuid", nullable: false),
                    confirmed = table.Column<string>(type: "text", nullable: false),
                    note = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_hand_blends", x => x.sample_id);
                    table.ForeignKey(
                        name: "FK_hand_blends_containers_blendstock_container_id",
                        column: x => x.blendstock_container_id,
                        principalTable: "containers",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_hand_blends_people_made_by",
                        column: x => x.made_by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_hand_blends_samples_blendstock_id",
                        column: x => x.blendstock_id,
                        principalTable: "samples",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_hand_blends_samples_sample_id",
                        column: x => x.sample_id,
                        principalTable: "samples",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "cargoes",
                columns: table => new
                {
                    certificate_id = table.Column<Guid>(type: "uuid", nullable: false),
                    ship = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    voyage = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    port = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    berth = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    stage = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    product = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    why_grades_differ = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    reference = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: true),
                    remarks = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_cargoes", x => x.certificate_id);
                    table.ForeignKey(
                        name: "FK_cargoes_certificates_certificate_id",
                        column: x => x.certificate_id,
                        principalTable: "certificates",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "handover_takings",
                columns: table => new
                {
                    note_id = table.Column<Guid>(type: "uuid", nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: false),
                    by_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_handover_takings", x => x.note_id);
                    table.ForeignKey(
                        name: "FK_handover_takings_handover_notes_note_id",
                        column: x => x.note_id,
                        principalTable: "handover_notes",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_handover_takings_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "determination_revisions",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    determination_id = table.Column<Guid>(type: "uuid", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    by = table.Column<Guid>(type: "uuid", nullable: false),
                    by_name = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    reason = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    set_aside = table.Column<bool>(type: "boolean", nullable: false),
                    assignable_cause = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: true),
                    readings = table.Column<string>(type: "text", nullable: false),
                    handling = table.Column<string>(type: "text", nullable: false),
                    findings = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_determination_revisions", x => x.id);
                    table.CheckConstraint("amendment_has_a_reason", "revision = 1 OR (revision > 1 AND reason IS NOT NULL AND trim(reason) <> '')");
                    table.CheckConstraint("set_aside_has_a_cause", "NOT set_aside OR (assignable_cause IS NOT NULL AND trim(assignable_cause) <> '')");
                    table.ForeignKey(
                        name: "FK_determination_revisions_determinations_determination_id",
                        column: x => x.determination_id,
                        principalTable: "determinations",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_determination_revisions_people_by",
                        column: x => x.by,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "results",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    determination_id = table.Column<Guid>(type: "uuid", nullable: false),
                    revision = table.Column<int>(type: "integer", nullable: false),
                    quantity = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    correlation = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    correlation_version = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    value = table.Column<decimal>(type: "numeric(28,10)", precision: 28, scale: 10, nullable: false),
                    exact = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    reported = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    unit = table.Column<string>(type: "character varying(16)", maxLength: 16, nullable: false),
                    suffix = table.Column<string>(type: "character varying(16)", maxLength: 16, nullable: false),
                    equation = table.Column<string>(type: "text", nullable: false),
                    source = table.Column<string>(type: "text", nullable: false),
                    status = table.Column<string>(type: "character varying(100)", maxLength: 100, nullable: false),
                    arithmetic = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_results", x => x.id);
                    table.ForeignKey(
                        name: "FK_results_determinations_determination_id",
                        column: x => x.determination_id,
                        principalTable: "determinations",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "taken_ons",
                columns: table => new
                {
                    determination_id = table.Column<Guid>(type: "uuid", nullable: false),
                    person_id = table.Column<Guid>(type: "uuid", nullable: false),
                    at = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_taken_ons", x => x.determination_id);
                    table.ForeignKey(
                        name: "FK_taken_ons_determinations_determination_id",
                        column: x => x.determination_id,
                        principalTable: "determinations",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_taken_ons_people_person_id",
                        column: x => x.person_id,
                        principalTable: "people",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "cargo_tanks",
                columns: table => new
                {
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    certificate_id = table.Column<Guid>(type: "uuid", nullable: false),
                    place = table.Column<int>(type: "integer", nullable: false),
                    tank_code = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    batch_id = table.Column<Guid>(type: "uuid", nullable: false),
                    decision_id = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_cargo_tanks", x => x.id);
                    table.ForeignKey(
                        name: "FK_cargo_tanks_batches_batch_id",
                        column: x => x.batch_id,
                        principalTable: "batches",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_cargo_tanks_cargoes_certificate_id",
                        column: x => x.certificate_id,
                        principalTable: "cargoes",
                        principalColumn: "certificate_id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_cargo_tanks_decisions_decision_id",
                        column: x => x.decision_id,
                        principalTable: "decisions",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_cargo_tanks_tanks_tank_code",
                        column: x => x.tank_code,
                        principalTable: "tanks",
                        principalColumn: "code",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_assessments_batch_id_at",
                table: "assessments",
                columns: new[] { "batch_id", "at" });

            migrationBuilder.CreateIndex(
                name: "IX_assessments_by",
                table: "assessments",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_assigned_tests_sample_id",
                table: "assigned_tests",
                column: "sample_id");

            migrationBuilder.CreateIndex(
                name: "IX_assigned_tests_state_due_at",
                table: "assigned_tests",
                columns: new[] { "state", "due_at" });

            migrationBuilder.CreateIndex(
                name: "IX_audit_records_at",
                table: "audit_records",
                column: "at");

            migrationBuilder.CreateIndex(
                name: "IX_audit_records_subject_subject_id",
                table: "audit_records",
                columns: new[] { "subject", "subject_id" });

            migrationBuilder.CreateIndex(
                name: "IX_batches_created_at",
                table: "batches",
                column: "created_at");

            migrationBuilder.CreateIndex(
                name: "IX_batches_created_by",
                table: "batches",
                column: "created_by");

            migrationBuilder.CreateIndex(
                name: "IX_batches_grade_code",
                table: "batches",
                column: "grade_code");

            migrationBuilder.CreateIndex(
                name: "IX_batches_number",
                table: "batches",
                column: "number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_batches_tank_code",
                table: "batches",
                column: "tank_code");

            migrationBuilder.CreateIndex(
                name: "IX_bench_drafts_person_id",
                table: "bench_drafts",
                column: "person_id");

            migrationBuilder.CreateIndex(
                name: "IX_bench_drafts_test_id_person_id",
                table: "bench_drafts",
                columns: new[] { "test_id", "person_id" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_blend_contents_by",
                table: "blend_contents",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_blend_contents_sample_id",
                table: "blend_contents",
                column: "sample_id");

            migrationBuilder.CreateIndex(
                name: "IX_cargo_tanks_batch_id",
                table: "cargo_tanks",
                column: "batch_id");

            migrationBuilder.CreateIndex(
                name: "IX_cargo_tanks_certificate_id_place",
                table: "cargo_tanks",
                columns: new[] { "certificate_id", "place" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_cargo_tanks_certificate_id_tank_code",
                table: "cargo_tanks",
                columns: new[] { "certificate_id", "tank_code" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_cargo_tanks_decision_id",
                table: "cargo_tanks",
                column: "decision_id");

            migrationBuilder.CreateIndex(
                name: "IX_cargo_tanks_tank_code",
                table: "cargo_tanks",
                column: "tank_code");

            migrationBuilder.CreateIndex(
                name: "IX_certificates_batch_id",
                table: "certificates",
                column: "batch_id");

            migrationBuilder.CreateIndex(
                name: "IX_certificates_check_code",
                table: "certificates",
                column: "check_code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_certificates_decision_id",
                table: "certificates",
                column: "decision_id",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_certificates_issued_at",
                table: "certificates",
                column: "issued_at");

            migrationBuilder.CreateIndex(
                name: "IX_certificates_issued_by",
                table: "certificates",
                column: "issued_by");

            migrationBuilder.CreateIndex(
                name: "IX_certificates_number_revision",
                table: "certificates",
                columns: new[] { "number", "revision" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_certificates_replaces_id",
                table: "certificates",
                column: "replaces_id");

            migrationBuilder.CreateIndex(
                name: "IX_container_openings_by",
                table: "container_openings",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_container_openings_container_id",
                table: "container_openings",
                column: "container_id");

            migrationBuilder.CreateIndex(
                name: "IX_containers_code",
                table: "containers",
                column: "code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_containers_sample_id_number",
                table: "containers",
                columns: new[] { "sample_id", "number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_correlation_entries_approved_by",
                table: "correlation_entries",
                column: "approved_by");

            migrationBuilder.CreateIndex(
                name: "IX_correlation_entries_drafted_by",
                table: "correlation_entries",
                column: "drafted_by");

            migrationBuilder.CreateIndex(
                name: "IX_correlation_entries_number",
                table: "correlation_entries",
                column: "number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_decisions_assessment_id",
                table: "decisions",
                column: "assessment_id");

            migrationBuilder.CreateIndex(
                name: "IX_decisions_at",
                table: "decisions",
                column: "at");

            migrationBuilder.CreateIndex(
                name: "IX_decisions_batch_id_sequence",
                table: "decisions",
                columns: new[] { "batch_id", "sequence" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_decisions_person_id",
                table: "decisions",
                column: "person_id");

            migrationBuilder.CreateIndex(
                name: "IX_determination_revisions_by",
                table: "determination_revisions",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_determination_revisions_determination_id_revision",
                table: "determination_revisions",
                columns: new[] { "determination_id", "revision" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_determinations_container_id",
                table: "determinations",
                column: "container_id");

            migrationBuilder.CreateIndex(
                name: "IX_determinations_instrument_code_external_id",
                table: "determinations",
                columns: new[] { "instrument_code", "external_id" },
                unique: true,
                filter: "external_id IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_determinations_measured_at",
                table: "determinations",
                column: "measured_at");

            migrationBuilder.CreateIndex(
                name: "IX_determinations_measured_by",
                table: "determinations",
                column: "measured_by");

            migrationBuilder.CreateIndex(
                name: "IX_determinations_recorded_by",
                table: "determinations",
                column: "recorded_by");

            migrationBuilder.CreateIndex(
                name: "IX_determinations_sample_id",
                table: "determinations",
                column: "sample_id");

            migrationBuilder.CreateIndex(
                name: "IX_determinations_test_id",
                table: "determinations",
                column: "test_id");

            migrationBuilder.CreateIndex(
                name: "one_test_a_container",
                table: "determinations",
                column: "container_id",
                unique: true,
                filter: "sole_test");

            migrationBuilder.CreateIndex(
                name: "IX_fact_confirmations_confirmed_by",
                table: "fact_confirmations",
                column: "confirmed_by");

            migrationBuilder.CreateIndex(
                name: "IX_hand_blends_blendstock_container_id",
                table: "hand_blends",
                column: "blendstock_container_id",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_hand_blends_blendstock_id",
                table: "hand_blends",
                column: "blendstock_id");

            migrationBuilder.CreateIndex(
                name: "IX_hand_blends_made_by",
                table: "hand_blends",
                column: "made_by");

            migrationBuilder.CreateIndex(
                name: "IX_handover_notes_at",
                table: "handover_notes",
                column: "at");

            migrationBuilder.CreateIndex(
                name: "IX_handover_notes_batch_id",
                table: "handover_notes",
                column: "batch_id");

            migrationBuilder.CreateIndex(
                name: "IX_handover_notes_by",
                table: "handover_notes",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_handover_notes_decision_id",
                table: "handover_notes",
                column: "decision_id");

            migrationBuilder.CreateIndex(
                name: "IX_handover_takings_by",
                table: "handover_takings",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_interface_keys_hash",
                table: "interface_keys",
                column: "hash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_interface_keys_owner_id",
                table: "interface_keys",
                column: "owner_id");

            migrationBuilder.CreateIndex(
                name: "IX_laboratory_areas_approved_by",
                table: "laboratory_areas",
                column: "approved_by");

            migrationBuilder.CreateIndex(
                name: "IX_laboratory_areas_code",
                table: "laboratory_areas",
                column: "code");

            migrationBuilder.CreateIndex(
                name: "IX_laboratory_areas_drafted_by",
                table: "laboratory_areas",
                column: "drafted_by");

            migrationBuilder.CreateIndex(
                name: "IX_laboratory_limits_approved_by",
                table: "laboratory_limits",
                column: "approved_by");

            migrationBuilder.CreateIndex(
                name: "IX_laboratory_limits_area_code",
                table: "laboratory_limits",
                column: "area_code");

            migrationBuilder.CreateIndex(
                name: "IX_laboratory_limits_drafted_by",
                table: "laboratory_limits",
                column: "drafted_by");

            migrationBuilder.CreateIndex(
                name: "IX_laboratory_limits_key",
                table: "laboratory_limits",
                column: "key");

            migrationBuilder.CreateIndex(
                name: "IX_on_call_turns_entered_by",
                table: "on_call_turns",
                column: "entered_by");

            migrationBuilder.CreateIndex(
                name: "IX_on_call_turns_person_id",
                table: "on_call_turns",
                column: "person_id");

            migrationBuilder.CreateIndex(
                name: "IX_on_call_turns_until",
                table: "on_call_turns",
                column: "until");

            migrationBuilder.CreateIndex(
                name: "IX_party_results_batch_id",
                table: "party_results",
                column: "batch_id");

            migrationBuilder.CreateIndex(
                name: "IX_party_results_entered_by",
                table: "party_results",
                column: "entered_by");

            migrationBuilder.CreateIndex(
                name: "IX_party_withdrawals_by",
                table: "party_withdrawals",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "EmailIndex",
                table: "people",
                column: "normalized_email");

            migrationBuilder.CreateIndex(
                name: "UserNameIndex",
                table: "people",
                column: "normalized_user_name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_person_claims_user_id",
                table: "person_claims",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "IX_person_logins_user_id",
                table: "person_logins",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "IX_precision_entries_approved_by",
                table: "precision_entries",
                column: "approved_by");

            migrationBuilder.CreateIndex(
                name: "IX_precision_entries_drafted_by",
                table: "precision_entries",
                column: "drafted_by");

            migrationBuilder.CreateIndex(
                name: "IX_precision_entries_method_quantity",
                table: "precision_entries",
                columns: new[] { "method", "quantity" });

            migrationBuilder.CreateIndex(
                name: "IX_results_determination_id_revision",
                table: "results",
                columns: new[] { "determination_id", "revision" });

            migrationBuilder.CreateIndex(
                name: "IX_results_quantity_determination_id",
                table: "results",
                columns: new[] { "quantity", "determination_id" });

            migrationBuilder.CreateIndex(
                name: "IX_review_marks_decision_id",
                table: "review_marks",
                column: "decision_id");

            migrationBuilder.CreateIndex(
                name: "IX_sample_points_tank_code",
                table: "sample_points",
                column: "tank_code");

            migrationBuilder.CreateIndex(
                name: "IX_samples_batch_id",
                table: "samples",
                column: "batch_id");

            migrationBuilder.CreateIndex(
                name: "IX_samples_grade_code",
                table: "samples",
                column: "grade_code");

            migrationBuilder.CreateIndex(
                name: "IX_samples_number",
                table: "samples",
                column: "number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_samples_received_by",
                table: "samples",
                column: "received_by");

            migrationBuilder.CreateIndex(
                name: "IX_samples_registered_at",
                table: "samples",
                column: "registered_at");

            migrationBuilder.CreateIndex(
                name: "IX_samples_registered_by",
                table: "samples",
                column: "registered_by");

            migrationBuilder.CreateIndex(
                name: "IX_samples_resample_of",
                table: "samples",
                column: "resample_of");

            migrationBuilder.CreateIndex(
                name: "IX_samples_sample_point_code",
                table: "samples",
                column: "sample_point_code");

            migrationBuilder.CreateIndex(
                name: "IX_samples_tank_code_sampled_at",
                table: "samples",
                columns: new[] { "tank_code", "sampled_at" });

            migrationBuilder.CreateIndex(
                name: "IX_samples_verdict_by",
                table: "samples",
                column: "verdict_by");

            migrationBuilder.CreateIndex(
                name: "IX_steps_taken_batch_id_occasion_subject_place",
                table: "steps_taken",
                columns: new[] { "batch_id", "occasion", "subject", "place" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_steps_taken_by",
                table: "steps_taken",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_steps_taken_test_id",
                table: "steps_taken",
                column: "test_id");

            migrationBuilder.CreateIndex(
                name: "IX_taken_ons_person_id",
                table: "taken_ons",
                column: "person_id");

            migrationBuilder.CreateIndex(
                name: "IX_tank_movements_recorded_by",
                table: "tank_movements",
                column: "recorded_by");

            migrationBuilder.CreateIndex(
                name: "IX_tank_movements_tank_code_at",
                table: "tank_movements",
                columns: new[] { "tank_code", "at" });

            migrationBuilder.CreateIndex(
                name: "IX_tanks_grade_code",
                table: "tanks",
                column: "grade_code");

            migrationBuilder.CreateIndex(
                name: "IX_verifications_by",
                table: "verifications",
                column: "by");

            migrationBuilder.CreateIndex(
                name: "IX_verifications_instrument_code_on",
                table: "verifications",
                columns: new[] { "instrument_code", "on" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "audit_records");

            migrationBuilder.DropTable(
                name: "bench_drafts");

            migrationBuilder.DropTable(
                name: "blend_contents");

            migrationBuilder.DropTable(
                name: "cargo_tanks");

            migrationBuilder.DropTable(
                name: "commands");

            migrationBuilder.DropTable(
                name: "container_openings");

            migrationBuilder.DropTable(
                name: "correlation_entries");

            migrationBuilder.DropTable(
                name: "counters");

            migrationBuilder.DropTable(
                name: "data_protection_keys");

            migrationBuilder.DropTable(
                name: "determination_revisions");

            migrationBuilder.DropTable(
                name: "fact_confirmations");

            migrationBuilder.DropTable(
                name: "hand_blends");

            migrationBuilder.DropTable(
                name: "handover_takings");

            migrationBuilder.DropTable(
                name: "interface_keys");

            migrationBuilder.DropTable(
                name: "laboratory_areas");

            migrationBuilder.DropTable(
                name: "laboratory_limits");

            migrationBuilder.DropTable(
                name: "laboratory_settings");

            migrationBuilder.DropTable(
                name: "on_call_turns");

            migrationBuilder.DropTable(
                name: "party_withdrawals");

            migrationBuilder.DropTable(
                name: "person_claims");

            migrationBuilder.DropTable(
                name: "person_logins");

            migrationBuilder.DropTable(
                name: "person_tokens");

            migrationBuilder.DropTable(
                name: "precision_entries");

            migrationBuilder.DropTable(
                name: "results");

            migrationBuilder.DropTable(
                name: "review_marks");

            migrationBuilder.DropTable(
                name: "steps_taken");

            migrationBuilder.DropTable(
                name: "taken_ons");

            migrationBuilder.DropTable(
                name: "tank_movements");

            migrationBuilder.DropTable(
                name: "verifications");

            migrationBuilder.DropTable(
                name: "cargoes");

            migrationBuilder.DropTable(
                name: "handover_notes");

            migrationBuilder.DropTable(
                name: "party_results");

            migrationBuilder.DropTable(
                name: "determinations");

            migrationBuilder.DropTable(
                name: "certificates");

            migrationBuilder.DropTable(
                name: "assigned_tests");

            migrationBuilder.DropTable(
                name: "containers");

            migrationBuilder.DropTable(
                name: "instruments");

            migrationBuilder.DropTable(
                name: "decisions");

            migrationBuilder.DropTable(
                name: "samples");

            migrationBuilder.DropTable(
                name: "assessments");

            migrationBuilder.DropTable(
                name: "sample_points");

            migrationBuilder.DropTable(
                name: "batches");

            migrationBuilder.DropTable(
                name: "people");

            migrationBuilder.DropTable(
                name: "tanks");

            migrationBuilder.DropTable(
                name: "grades");
        }
    }
}
