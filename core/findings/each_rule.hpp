// Every rule, defined in the file named after its id. Limits stand in those files; "common practice" there means: no
// source.
#pragma once

#include "core/findings/rules.hpp"

namespace sumpwright::findings
{

extern const Rule planWithoutPump;
extern const Rule pumpFault;
extern const Rule pumpOff;
extern const Rule pumpWithoutRun;
extern const Rule pumpCannotLift;
extern const Rule pumpBeyondCurve;
extern const Rule pumpLowShare;
extern const Rule pumpLessWhenFouled;
extern const Rule pumpPowerMissing;
extern const Rule pumpParallelWithoutCheck;
extern const Rule pumpTogether;
extern const Rule pumpTwoNumbers;
extern const Rule pumpUncovered;
extern const Rule pumpNearDry;
extern const Rule pumpSwirl;
extern const Rule runOpenEnd;
extern const Rule runUnfed;
extern const Rule runUnknownPipe;
extern const Rule runVelocityHigh;
extern const Rule runGravityPipe;
extern const Rule runAboveReach;
extern const Rule runLowPressure;
extern const Rule runAgainstDrawing;
extern const Rule runTransition;
extern const Rule runCrosses;
extern const Rule runThroughVessel;
extern const Rule runThroughWall;
extern const Rule runInDoorway;
extern const Rule runAboveCeiling;
extern const Rule runBelowFloor;
extern const Rule runSupports;
extern const Rule runHighPoint;
extern const Rule serviceNoValve;
extern const Rule serviceNoUnion;
extern const Rule runCorrugated;
extern const Rule valveClosed;
extern const Rule valveNoTable;
extern const Rule teeLowPressure;
extern const Rule outletWithoutFlow;
extern const Rule outletLessWhenFouled;
extern const Rule altitudeMissing;
extern const Rule waterTemperature;
extern const Rule sumpLevel;
extern const Rule sumpRunsDry;
extern const Rule sumpSpills;
extern const Rule sumpLittleRoom;
extern const Rule sumpMissing;
extern const Rule sumpSeveral;
extern const Rule waterNotSolved;
extern const Rule vesselOverRim;
extern const Rule vesselFreeBoard;
extern const Rule vesselWithoutInlet;
extern const Rule vesselWithoutOutlet;
extern const Rule vesselLevelUnknown;
extern const Rule vesselLipToNowhere;
extern const Rule vesselFedTwice;
extern const Rule overflowTooSmall;
extern const Rule overflowNoisy;
extern const Rule overflowBoreUnknown;
extern const Rule emergencyMissing;
extern const Rule emergencyTooSmall;
extern const Rule vesselHeldByRun;
extern const Rule runSurcharged;
extern const Rule runFillHigh;
extern const Rule runSlow;
extern const Rule siphonBack;
extern const Rule gravityNoFall;
extern const Rule gravityRises;
extern const Rule vesselsOverlap;
extern const Rule vesselOutsideFloor;
extern const Rule aisleNarrow;
extern const Rule headroom;
extern const Rule doorNarrow;
extern const Rule reachValve;
extern const Rule reachSiphon;
extern const Rule reachBed;
extern const Rule standMissing;
extern const Rule raisedTank;
extern const Rule aboveLiveLoad;
extern const Rule floorUseUnknown;
extern const Rule floorCaution;
extern const Rule electricCaution;
extern const Rule powerPointWet;
extern const Rule catalogueUnknownRow;
extern const Rule catalogueOutOfRange;
extern const Rule catalogueFromMemory;
extern const Rule catalogueInvented;
extern const Rule catalogueOwn;

} // namespace sumpwright::findings
