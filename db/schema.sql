CREATE TABLE "AspNetRoleClaims" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_AspNetRoleClaims" PRIMARY KEY AUTOINCREMENT,
    "RoleId" INTEGER NOT NULL,
    "ClaimType" TEXT NULL,
    "ClaimValue" TEXT NULL,
    CONSTRAINT "FK_AspNetRoleClaims_AspNetRoles_RoleId" FOREIGN KEY ("RoleId") REFERENCES "AspNetRoles" ("Id") ON DELETE CASCADE
);

CREATE INDEX "IX_AspNetRoleClaims_RoleId" ON "AspNetRoleClaims" ("RoleId");

CREATE TABLE "AspNetRoles" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_AspNetRoles" PRIMARY KEY AUTOINCREMENT,
    "Name" TEXT NULL,
    "NormalizedName" TEXT NULL,
    "ConcurrencyStamp" TEXT NULL
);

CREATE UNIQUE INDEX "RoleNameIndex" ON "AspNetRoles" ("NormalizedName");

CREATE TABLE "AspNetUserClaims" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_AspNetUserClaims" PRIMARY KEY AUTOINCREMENT,
    "UserId" INTEGER NOT NULL,
    "ClaimType" TEXT NULL,
    "ClaimValue" TEXT NULL,
    CONSTRAINT "FK_AspNetUserClaims_AspNetUsers_UserId" FOREIGN KEY ("UserId") REFERENCES "AspNetUsers" ("Id") ON DELETE CASCADE
);

CREATE INDEX "IX_AspNetUserClaims_UserId" ON "AspNetUserClaims" ("UserId");

CREATE TABLE "AspNetUserLogins" (
    "LoginProvider" TEXT NOT NULL,
    "ProviderKey" TEXT NOT NULL,
    "ProviderDisplayName" TEXT NULL,
    "UserId" INTEGER NOT NULL,
    CONSTRAINT "PK_AspNetUserLogins" PRIMARY KEY ("LoginProvider", "ProviderKey"),
    CONSTRAINT "FK_AspNetUserLogins_AspNetUsers_UserId" FOREIGN KEY ("UserId") REFERENCES "AspNetUsers" ("Id") ON DELETE CASCADE
);

CREATE INDEX "IX_AspNetUserLogins_UserId" ON "AspNetUserLogins" ("UserId");

CREATE TABLE "AspNetUserRoles" (
    "UserId" INTEGER NOT NULL,
    "RoleId" INTEGER NOT NULL,
    CONSTRAINT "PK_AspNetUserRoles" PRIMARY KEY ("UserId", "RoleId"),
    CONSTRAINT "FK_AspNetUserRoles_AspNetRoles_RoleId" FOREIGN KEY ("RoleId") REFERENCES "AspNetRoles" ("Id") ON DELETE CASCADE,
    CONSTRAINT "FK_AspNetUserRoles_AspNetUsers_UserId" FOREIGN KEY ("UserId") REFERENCES "AspNetUsers" ("Id") ON DELETE CASCADE
);

CREATE INDEX "IX_AspNetUserRoles_RoleId" ON "AspNetUserRoles" ("RoleId");

CREATE TABLE "AspNetUserTokens" (
    "UserId" INTEGER NOT NULL,
    "LoginProvider" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Value" TEXT NULL,
    CONSTRAINT "PK_AspNetUserTokens" PRIMARY KEY ("UserId", "LoginProvider", "Name"),
    CONSTRAINT "FK_AspNetUserTokens_AspNetUsers_UserId" FOREIGN KEY ("UserId") REFERENCES "AspNetUsers" ("Id") ON DELETE CASCADE
);

CREATE TABLE "AspNetUsers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_AspNetUsers" PRIMARY KEY AUTOINCREMENT,
    "PersonCode" TEXT NULL,
    "Language" TEXT NOT NULL,
    "CustomerId" INTEGER NULL,
    "DisabledAt" INTEGER NULL,
    "UserName" TEXT NULL,
    "NormalizedUserName" TEXT NULL,
    "Email" TEXT NULL,
    "NormalizedEmail" TEXT NULL,
    "EmailConfirmed" INTEGER NOT NULL,
    "PasswordHash" TEXT NULL,
    "SecurityStamp" TEXT NULL,
    "ConcurrencyStamp" TEXT NULL,
    "PhoneNumber" TEXT NULL,
    "PhoneNumberConfirmed" INTEGER NOT NULL,
    "TwoFactorEnabled" INTEGER NOT NULL,
    "LockoutEnd" INTEGER NULL,
    "LockoutEnabled" INTEGER NOT NULL,
    "AccessFailedCount" INTEGER NOT NULL, "NoticeAtOnce" INTEGER NOT NULL DEFAULT 0, "NoticeDigest" INTEGER NOT NULL DEFAULT 0, "NoticeOwnSites" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "FK_AspNetUsers_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "EmailIndex" ON "AspNetUsers" ("NormalizedEmail");

CREATE INDEX "IX_AspNetUsers_CustomerId" ON "AspNetUsers" ("CustomerId");

CREATE INDEX "IX_AspNetUsers_PersonCode" ON "AspNetUsers" ("PersonCode");

CREATE UNIQUE INDEX "UserNameIndex" ON "AspNetUsers" ("NormalizedUserName");

CREATE TABLE "AuditHead" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_AuditHead" PRIMARY KEY,
    "Count" INTEGER NOT NULL,
    "Hash" TEXT NOT NULL
);

CREATE TABLE "AuditTrail" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_AuditTrail" PRIMARY KEY,
    "At" INTEGER NOT NULL,
    "DeviceAt" INTEGER NULL,
    "Who" TEXT NOT NULL,
    "UserId" INTEGER NULL,
    "What" TEXT NOT NULL,
    "Entity" TEXT NOT NULL,
    "Key" TEXT NOT NULL,
    "CustomerId" INTEGER NULL,
    "Old" TEXT NULL,
    "New" TEXT NULL,
    "Why" TEXT NULL,
    "Previous" TEXT NOT NULL,
    "Hash" TEXT NOT NULL
);

CREATE INDEX "IX_AuditTrail_CustomerId" ON "AuditTrail" ("CustomerId");

CREATE INDEX "IX_AuditTrail_Entity_Key" ON "AuditTrail" ("Entity", "Key");

CREATE TRIGGER "AuditTrail_NoDelete" BEFORE DELETE ON "AuditTrail"
BEGIN SELECT RAISE(ABORT, 'The audit trail is never deleted.'); END;

CREATE TRIGGER "AuditTrail_NoUpdate" BEFORE UPDATE ON "AuditTrail"
BEGIN SELECT RAISE(ABORT, 'The audit trail is never changed.'); END;

CREATE TABLE "Clocks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Clocks" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "SystemId" INTEGER NOT NULL,
    "Clocks" TEXT NOT NULL,
    "EngineVersion" TEXT NOT NULL,
    CONSTRAINT "FK_Clocks_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Clocks_Systems_SystemId" FOREIGN KEY ("SystemId") REFERENCES "Systems" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Clocks_CustomerId" ON "Clocks" ("CustomerId");

CREATE UNIQUE INDEX "IX_Clocks_SystemId" ON "Clocks" ("SystemId");

CREATE TABLE "Clues" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Clues" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "SystemId" INTEGER NOT NULL,
    "Clues" TEXT NOT NULL,
    "Seen" TEXT NOT NULL,
    "EngineVersion" TEXT NOT NULL,
    CONSTRAINT "FK_Clues_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Clues_Systems_SystemId" FOREIGN KEY ("SystemId") REFERENCES "Systems" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Clues_CustomerId" ON "Clues" ("CustomerId");

CREATE UNIQUE INDEX "IX_Clues_SystemId" ON "Clues" ("SystemId");

CREATE TABLE "Conflicts" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Conflicts" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "VisitRowId" INTEGER NOT NULL,
    "VisitId" TEXT NOT NULL,
    "VisitVersion" INTEGER NOT NULL,
    "Document" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    "Source" TEXT NOT NULL,
    "Who" TEXT NOT NULL,
    "SettledAt" INTEGER NULL,
    "SettledBy" TEXT NULL,
    "SettledHow" TEXT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_Conflicts_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Conflicts_Visits_VisitRowId" FOREIGN KEY ("VisitRowId") REFERENCES "Visits" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Conflicts_CustomerId" ON "Conflicts" ("CustomerId");

CREATE INDEX "IX_Conflicts_SettledAt" ON "Conflicts" ("SettledAt");

CREATE UNIQUE INDEX "IX_Conflicts_VisitId_Sha256" ON "Conflicts" ("VisitId", "Sha256");

CREATE INDEX "IX_Conflicts_VisitRowId" ON "Conflicts" ("VisitRowId");

CREATE TABLE "Customers" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Customers" PRIMARY KEY AUTOINCREMENT,
    "Code" TEXT NOT NULL,
    "CodeKey" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Document" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "RetiredAt" INTEGER NULL,
    "RetiredWhy" TEXT NULL
);

CREATE UNIQUE INDEX "IX_Customers_CodeKey" ON "Customers" ("CodeKey");

CREATE TABLE "Drafts" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Drafts" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "SiteId" INTEGER NOT NULL,
    "UserId" INTEGER NOT NULL,
    "VisitId" TEXT NOT NULL,
    "Document" TEXT NOT NULL,
    "UpdatedAt" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    CONSTRAINT "FK_Drafts_AspNetUsers_UserId" FOREIGN KEY ("UserId") REFERENCES "AspNetUsers" ("Id") ON DELETE CASCADE,
    CONSTRAINT "FK_Drafts_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Drafts_Sites_SiteId" FOREIGN KEY ("SiteId") REFERENCES "Sites" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Drafts_CustomerId" ON "Drafts" ("CustomerId");

CREATE INDEX "IX_Drafts_SiteId" ON "Drafts" ("SiteId");

CREATE UNIQUE INDEX "IX_Drafts_UserId_VisitId" ON "Drafts" ("UserId", "VisitId");

CREATE TABLE "Figures" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Figures" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "SiteId" INTEGER NOT NULL,
    "SystemId" INTEGER NOT NULL,
    "VisitRowId" INTEGER NOT NULL,
    "Code" TEXT NOT NULL,
    "About" TEXT NOT NULL,
    "From" INTEGER NULL,
    "To" INTEGER NOT NULL,
    "Value" REAL NULL,
    "StandardUncertainty" REAL NULL,
    "Unit" TEXT NULL,
    "ReasonCode" TEXT NULL,
    "Reasons" TEXT NULL,
    "Inputs" TEXT NOT NULL,
    CONSTRAINT "FK_Figures_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Figures_Sites_SiteId" FOREIGN KEY ("SiteId") REFERENCES "Sites" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Figures_Systems_SystemId" FOREIGN KEY ("SystemId") REFERENCES "Systems" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Figures_Visits_VisitRowId" FOREIGN KEY ("VisitRowId") REFERENCES "Visits" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Figures_CustomerId" ON "Figures" ("CustomerId");

CREATE INDEX "IX_Figures_SiteId" ON "Figures" ("SiteId");

CREATE INDEX "IX_Figures_SystemId_Code_To" ON "Figures" ("SystemId", "Code", "To");

CREATE INDEX "IX_Figures_VisitRowId" ON "Figures" ("VisitRowId");

CREATE TABLE "FindingMarks" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_FindingMarks" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NULL,
    "SiteId" INTEGER NULL,
    "SystemId" INTEGER NULL,
    "Kind" TEXT NOT NULL,
    "AboutKey" TEXT NOT NULL,
    "FirstSeen" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "Until" TEXT NULL,
    "Because" TEXT NULL,
    "Who" TEXT NOT NULL,
    "At" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL, "Owner" TEXT NULL, "Severity" TEXT NULL,
    CONSTRAINT "FK_FindingMarks_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_FindingMarks_Sites_SiteId" FOREIGN KEY ("SiteId") REFERENCES "Sites" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_FindingMarks_Systems_SystemId" FOREIGN KEY ("SystemId") REFERENCES "Systems" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_FindingMarks_CustomerId" ON "FindingMarks" ("CustomerId");

CREATE INDEX "IX_FindingMarks_SiteId" ON "FindingMarks" ("SiteId");

CREATE INDEX "IX_FindingMarks_SystemId_Kind_AboutKey_FirstSeen" ON "FindingMarks" ("SystemId", "Kind", "AboutKey", "FirstSeen");

CREATE TABLE "Findings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Findings" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NULL,
    "SiteId" INTEGER NULL,
    "SystemId" INTEGER NULL,
    "Kind" TEXT NOT NULL,
    "AboutKey" TEXT NOT NULL,
    "Severity" TEXT NOT NULL,
    "State" TEXT NOT NULL,
    "FirstSeen" TEXT NOT NULL,
    "LastSeen" TEXT NOT NULL,
    "ClosedOn" TEXT NULL,
    "Until" TEXT NULL,
    "FirstVisit" TEXT NULL,
    "English" TEXT NOT NULL,
    "Spanish" TEXT NOT NULL,
    "Portuguese" TEXT NOT NULL,
    "EngineVersion" TEXT NOT NULL,
    CONSTRAINT "FK_Findings_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Findings_Sites_SiteId" FOREIGN KEY ("SiteId") REFERENCES "Sites" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Findings_Systems_SystemId" FOREIGN KEY ("SystemId") REFERENCES "Systems" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Findings_CustomerId" ON "Findings" ("CustomerId");

CREATE INDEX "IX_Findings_SiteId_State" ON "Findings" ("SiteId", "State");

CREATE INDEX "IX_Findings_State_Severity_LastSeen" ON "Findings" ("State", "Severity", "LastSeen");

CREATE INDEX "IX_Findings_SystemId_Kind_AboutKey_FirstSeen" ON "Findings" ("SystemId", "Kind", "AboutKey", "FirstSeen");

CREATE TABLE "Firm" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Firm" PRIMARY KEY,
    "Name" TEXT NOT NULL,
    "IsDemo" INTEGER NOT NULL,
    "CreatedAt" INTEGER NOT NULL,
    "FirstRunDone" INTEGER NOT NULL,
    "DemoClockFrom" INTEGER NULL,
    "SetUpStamp" INTEGER NOT NULL
, "RoundAssessedAt" INTEGER NULL, "AuditShare" REAL NULL);

CREATE TABLE "Outbox" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Outbox" PRIMARY KEY AUTOINCREMENT,
    "About" TEXT NULL,
    "AcceptedAt" INTEGER NULL,
    "Attempts" INTEGER NOT NULL,
    "CreatedAt" INTEGER NOT NULL,
    "CustomerId" INTEGER NULL,
    "DueAt" INTEGER NOT NULL,
    "GivenUpAt" INTEGER NULL,
    "HtmlBody" TEXT NULL,
    "Kind" TEXT NOT NULL,
    "Language" TEXT NOT NULL,
    "LastError" TEXT NULL,
    "MessageId" TEXT NOT NULL,
    "Recipient" TEXT NOT NULL,
    "RecipientName" TEXT NOT NULL,
    "ServerSaid" TEXT NULL,
    "Subject" TEXT NULL,
    "TextBody" TEXT NULL,
    "Version" INTEGER NOT NULL,
    "VisitRowId" INTEGER NULL,
    "VisitVersion" INTEGER NOT NULL,
    CONSTRAINT "FK_Outbox_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Outbox_Visits_VisitRowId" FOREIGN KEY ("VisitRowId") REFERENCES "Visits" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Outbox_AcceptedAt_GivenUpAt_DueAt" ON "Outbox" ("AcceptedAt", "GivenUpAt", "DueAt");

CREATE INDEX "IX_Outbox_CustomerId" ON "Outbox" ("CustomerId");

CREATE UNIQUE INDEX "IX_Outbox_Kind_Recipient_About" ON "Outbox" ("Kind", "Recipient", "About");

CREATE UNIQUE INDEX "IX_Outbox_MessageId" ON "Outbox" ("MessageId");

CREATE INDEX "IX_Outbox_VisitRowId" ON "Outbox" ("VisitRowId");

CREATE TABLE "Photos" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Photos" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "VisitRowId" INTEGER NOT NULL,
    "PhotoId" TEXT NOT NULL,
    "Of" TEXT NOT NULL,
    "Sha256" TEXT NULL,
    "TakenAt" INTEGER NULL,
    "StoredAt" INTEGER NULL,
    "FileName" TEXT NULL,
    "MediaType" TEXT NULL,
    "Bytes" INTEGER NULL, "FileSha256" TEXT NULL,
    CONSTRAINT "FK_Photos_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Photos_Visits_VisitRowId" FOREIGN KEY ("VisitRowId") REFERENCES "Visits" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Photos_CustomerId" ON "Photos" ("CustomerId");

CREATE UNIQUE INDEX "IX_Photos_PhotoId" ON "Photos" ("PhotoId");

CREATE INDEX "IX_Photos_VisitRowId" ON "Photos" ("VisitRowId");

CREATE TABLE "Readings" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Readings" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "VisitRowId" INTEGER NOT NULL,
    "SystemId" INTEGER NOT NULL,
    "Test" TEXT NOT NULL,
    "SampleAt" TEXT NOT NULL,
    "Source" TEXT NULL,
    "Phase" TEXT NULL,
    "ArrivedAt" INTEGER NOT NULL,
    "Value" REAL NULL,
    "Unit" TEXT NOT NULL,
    "Basis" TEXT NULL,
    "Qualifier" TEXT NULL,
    "NotTaken" TEXT NULL,
    "Instrument" TEXT NULL,
    "Lot" TEXT NULL,
    "Place" INTEGER NOT NULL,
    CONSTRAINT "FK_Readings_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Readings_Systems_SystemId" FOREIGN KEY ("SystemId") REFERENCES "Systems" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Readings_Visits_VisitRowId" FOREIGN KEY ("VisitRowId") REFERENCES "Visits" ("Id") ON DELETE CASCADE
);

CREATE INDEX "IX_Readings_CustomerId" ON "Readings" ("CustomerId");

CREATE INDEX "IX_Readings_History" ON "Readings" ("SystemId", "Test", "ArrivedAt", "CustomerId", "SampleAt", "Source", "Phase", "Value", "Unit", "Qualifier", "VisitRowId");

CREATE INDEX "IX_Readings_VisitRowId" ON "Readings" ("VisitRowId");

CREATE TABLE "SetUp" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_SetUp" PRIMARY KEY AUTOINCREMENT,
    "Kind" TEXT NOT NULL,
    "Code" TEXT NOT NULL,
    "CodeKey" TEXT NOT NULL,
    "From" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Document" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "RetiredAt" INTEGER NULL,
    "RetiredWhy" TEXT NULL
);

CREATE UNIQUE INDEX "IX_SetUp_Kind_CodeKey_From" ON "SetUp" ("Kind", "CodeKey", "From");

CREATE TABLE "Sites" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Sites" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "Code" TEXT NOT NULL,
    "CodeKey" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Document" TEXT NOT NULL,
    "TimeZone" TEXT NOT NULL,
    "VisitEveryDays" REAL NULL,
    "AssignedTo" TEXT NULL,
    "Version" INTEGER NOT NULL,
    "RetiredAt" INTEGER NULL,
    "RetiredWhy" TEXT NULL,
    CONSTRAINT "FK_Sites_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Sites_AssignedTo" ON "Sites" ("AssignedTo");

CREATE UNIQUE INDEX "IX_Sites_CodeKey" ON "Sites" ("CodeKey");

CREATE INDEX "IX_Sites_CustomerId" ON "Sites" ("CustomerId");

CREATE TABLE "Systems" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Systems" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "SiteId" INTEGER NOT NULL,
    "Code" TEXT NOT NULL,
    "CodeKey" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "Document" TEXT NOT NULL,
    "Version" INTEGER NOT NULL,
    "RetiredAt" INTEGER NULL,
    "RetiredWhy" TEXT NULL,
    "AssessmentDue" INTEGER NULL,
    "AssessedAt" INTEGER NULL,
    "EngineVersion" TEXT NULL, "Ahead" TEXT NULL,
    CONSTRAINT "FK_Systems_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Systems_Sites_SiteId" FOREIGN KEY ("SiteId") REFERENCES "Sites" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Systems_AssessmentDue" ON "Systems" ("AssessmentDue");

CREATE INDEX "IX_Systems_CustomerId" ON "Systems" ("CustomerId");

CREATE UNIQUE INDEX "IX_Systems_SiteId_CodeKey" ON "Systems" ("SiteId", "CodeKey");

CREATE TABLE "Tokens" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Tokens" PRIMARY KEY AUTOINCREMENT,
    "UserId" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "Hash" TEXT NOT NULL,
    "Scopes" TEXT NOT NULL,
    "CreatedAt" INTEGER NOT NULL,
    "ExpiresAt" INTEGER NOT NULL,
    "LastUsedAt" INTEGER NULL,
    "RevokedAt" INTEGER NULL,
    CONSTRAINT "FK_Tokens_AspNetUsers_UserId" FOREIGN KEY ("UserId") REFERENCES "AspNetUsers" ("Id") ON DELETE CASCADE
);

CREATE UNIQUE INDEX "IX_Tokens_Hash" ON "Tokens" ("Hash");

CREATE INDEX "IX_Tokens_UserId" ON "Tokens" ("UserId");

CREATE TABLE "VisitVersions" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_VisitVersions" PRIMARY KEY AUTOINCREMENT,
    "CustomerId" INTEGER NOT NULL,
    "VisitRowId" INTEGER NOT NULL,
    "Version" INTEGER NOT NULL,
    "Document" TEXT NOT NULL,
    "Sha256" TEXT NOT NULL,
    "ReceivedAt" INTEGER NOT NULL,
    "Source" TEXT NOT NULL,
    "Who" TEXT NOT NULL,
    "Reason" TEXT NULL,
    CONSTRAINT "FK_VisitVersions_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_VisitVersions_Visits_VisitRowId" FOREIGN KEY ("VisitRowId") REFERENCES "Visits" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_VisitVersions_CustomerId" ON "VisitVersions" ("CustomerId");

CREATE UNIQUE INDEX "IX_VisitVersions_VisitRowId_Version" ON "VisitVersions" ("VisitRowId", "Version");

CREATE TABLE "Visits" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK_Visits" PRIMARY KEY AUTOINCREMENT,
    "VisitId" TEXT NOT NULL,
    "CustomerId" INTEGER NOT NULL,
    "SiteId" INTEGER NOT NULL,
    "CurrentVersion" INTEGER NOT NULL,
    "Kind" TEXT NOT NULL,
    "Technician" TEXT NOT NULL,
    "ArrivedAt" INTEGER NOT NULL,
    "LeftAt" INTEGER NULL,
    "ReceivedAt" INTEGER NOT NULL,
    "State" TEXT NOT NULL,
    "ReviewedAt" INTEGER NULL,
    "ReviewedBy" TEXT NULL,
    "VoidedAt" INTEGER NULL,
    "VoidedBy" TEXT NULL,
    "VoidedWhy" TEXT NULL,
    "MovedFromSiteId" INTEGER NULL,
    "Version" INTEGER NOT NULL, "ReviewFault" INTEGER NOT NULL DEFAULT 0,
    CONSTRAINT "FK_Visits_Customers_CustomerId" FOREIGN KEY ("CustomerId") REFERENCES "Customers" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Visits_Sites_MovedFromSiteId" FOREIGN KEY ("MovedFromSiteId") REFERENCES "Sites" ("Id") ON DELETE RESTRICT,
    CONSTRAINT "FK_Visits_Sites_SiteId" FOREIGN KEY ("SiteId") REFERENCES "Sites" ("Id") ON DELETE RESTRICT
);

CREATE INDEX "IX_Visits_ArrivedAt" ON "Visits" ("ArrivedAt");

CREATE INDEX "IX_Visits_CustomerId" ON "Visits" ("CustomerId");

CREATE INDEX "IX_Visits_MovedFromSiteId" ON "Visits" ("MovedFromSiteId");

CREATE INDEX "IX_Visits_SiteId_ArrivedAt" ON "Visits" ("SiteId", "ArrivedAt");

CREATE INDEX "IX_Visits_State_ArrivedAt" ON "Visits" ("State", "ArrivedAt");

CREATE UNIQUE INDEX "IX_Visits_VisitId" ON "Visits" ("VisitId");

CREATE TABLE "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
);

CREATE TABLE "__EFMigrationsLock" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY,
    "Timestamp" TEXT NOT NULL
);
