"use strict";(()=>{var t0=new Uint8Array(new Uint32Array([1]).buffer)[0]===1;function hh(i){let t=atob(i),e=new Uint8Array(t.length);for(let n=0;n<t.length;n++)e[n]=t.charCodeAt(n);return e.buffer}function _o(i){let t=hh(i);if(!t0){let e=new DataView(t);for(let n=0;n+4<=t.byteLength;n+=4)e.setUint32(n,e.getUint32(n,!0),!1)}return t}var ba=class{offsets;segments;owner;row=new Map;step;constructor(t){this.offsets=new Uint32Array(_o(t.offsets)),this.segments=new Float32Array(_o(t.segments)),this.owner=new Uint8Array(hh(t.owner)),t.stations.forEach((e,n)=>this.row.set(e,n)),this.step=t.stations.slice(1).reduce((e,n,s)=>Math.max(e,Math.min(20,n-t.stations[s])),1)}at(t){for(let e=0;e<=this.step;e++){let n=this.row.get(t-e)??this.row.get(t+e);if(n!==void 0)return this.outline(n)}return null}isNeighbour(t){return!this.row.has(t)}outline(t){let[e,n]=[this.offsets[t],this.offsets[t+1]];return{segments:this.segments.subarray(4*e,4*n),owner:this.owner.subarray(e,n)}}};function zd(i){return{part:i.part,positions:new Float32Array(_o(i.positions)),triangles:new Uint32Array(_o(i.triangles)),face:new Int32Array(_o(i.face)),leftOut:i.left_out??0}}async function Vd(i){let t=new Blob([hh(i.textContent.trim())]).stream().pipeThrough(new DecompressionStream("gzip"));return JSON.parse(await new Response(t).text())}var wa=class{constructor(t){this.payload=t}payload;unit(t){let e=this.payload.quantities[t]?.unit??"";return e==="1"?"":e}title(t){return this.payload.quantities[t]?.title??t}bare(t,e){let n=t.toFixed(this.payload.quantities[e]?.decimals??3);return Number(n)===0?n.replace("-",""):n}value(t,e){if(t==null||!Number.isFinite(t))return"not measured";if(e.startsWith("trap_open"))return t?"open":"closed";let n=this.unit(e);return n?`${this.bare(t,e)} ${n}`:this.bare(t,e)}reason(t,e,n,s){let r=this.payload.joints.find(o=>o.id===t)?.contours.find(o=>o.id===e);for(let o of r?.unmeasured??[]){if(o.column!==n)continue;let{from_s:a,to_s:c}=o;if(a<=c?s>=a-1e-6&&s<=c+1e-6:s>=a-1e-6||s<=c+1e-6)return this.payload.reasons[o.why]??o.why}return""}part(t){return this.payload.parts.find(e=>e.id===t)?.name||t}},yr={"must-fix":"◆",attention:"▲",note:"○"};function Ms(i){let t=i.map(e=>e.n);return t.slice(0,3).join("·")+(t.length>3?` +${t.length-3}`:"")}var Ea=class{constructor(t){this.payload=t;this.words=new wa(t)}payload;words;sections=new Map;unpacked=null;sectionsOf(t,e){let n=`${t}/${e}`;if(!this.sections.has(n)){let s=this.payload.view?.sections.find(r=>r.joint===t&&r.contour===e);this.sections.set(n,s?new ba(s):null)}return this.sections.get(n)}get meshes(){return this.unpacked??=(this.payload.view?.meshes??[]).map(zd),this.unpacked}};var e0="uplot",n0="u-hz",i0="u-vt",s0="u-title",r0="u-wrap",o0="u-under",a0="u-over",l0="u-axis",Xs="u-off",c0="u-select",h0="u-cursor-x",u0="u-cursor-y",d0="u-cursor-pt",f0="u-legend",p0="u-live",m0="u-inline",g0="u-series",_0="u-marker",Gd="u-label",x0="u-value",yo="width",vo="height";var Hd="bottom",vr="left",uh="right",Rh="#000",Wd=Rh+"0",dh="mousemove",Xd="mousedown",fh="mouseup",qd="mouseenter",Yd="mouseleave",$d="dblclick",y0="resize",v0="scroll",Zd="change",Pa="dppxchange",Ch="--",Ar=typeof window<"u",xh=Ar?document:null,Sr=Ar?window:null,M0=Ar?navigator:null,we,Ta;function yh(){let i=devicePixelRatio;we!=i&&(we=i,Ta&&Mh(Zd,Ta,yh),Ta=matchMedia(`(min-resolution: ${we-.001}dppx) and (max-resolution: ${we+.001}dppx)`),qs(Zd,Ta,yh),Sr.dispatchEvent(new CustomEvent(Pa)))}function ni(i,t){if(t!=null){let e=i.classList;!e.contains(t)&&e.add(t)}}function vh(i,t){let e=i.classList;e.contains(t)&&e.remove(t)}function He(i,t,e){i.style[t]=e+"px"}function vi(i,t,e,n){let s=xh.createElement(i);return t!=null&&ni(s,t),e?.insertBefore(s,n),s}function fi(i,t){return vi("div",i,t)}var Jd=new WeakMap;function zi(i,t,e,n,s){let r="translate("+t+"px,"+e+"px)",o=Jd.get(i);r!=o&&(i.style.transform=r,Jd.set(i,r),t<0||e<0||t>n||e>s?ni(i,Xs):vh(i,Xs))}var Kd=new WeakMap;function jd(i,t,e){let n=t+e,s=Kd.get(i);n!=s&&(Kd.set(i,n),i.style.background=t,i.style.borderColor=e)}var Qd=new WeakMap;function tf(i,t,e,n){let s=t+""+e,r=Qd.get(i);s!=r&&(Qd.set(i,s),i.style.height=e+"px",i.style.width=t+"px",i.style.marginLeft=n?-t/2+"px":0,i.style.marginTop=n?-e/2+"px":0)}var Ph={passive:!0},S0={...Ph,capture:!0};function qs(i,t,e,n){t.addEventListener(i,e,n?S0:Ph)}function Mh(i,t,e,n){t.removeEventListener(i,e,Ph)}Ar&&yh();function Mi(i,t,e,n){let s;e=e||0,n=n||t.length-1;let r=n<=2147483647;for(;n-e>1;)s=r?e+n>>1:ii((e+n)/2),t[s]<i?e=s:n=s;return i-t[e]<=t[n]-i?e:n}function Cf(i){return(e,n,s)=>{let r=-1,o=-1;for(let a=n;a<=s;a++)if(i(e[a])){r=a;break}for(let a=s;a>=n;a--)if(i(e[a])){o=a;break}return[r,o]}}var Pf=i=>i!=null,If=i=>i!=null&&i>0,Da=Cf(Pf),b0=Cf(If);function w0(i,t,e,n=0,s=!1){let r=s?b0:Da,o=s?If:Pf;[t,e]=r(i,t,e);let a=i[t],c=i[t];if(t>-1)if(n==1)a=i[t],c=i[e];else if(n==-1)a=i[e],c=i[t];else for(let l=t;l<=e;l++){let u=i[l];o(u)&&(u<a?a=u:u>c&&(c=u))}return[a??Fe,c??-Fe]}function Na(i,t,e,n){let s=sf(i),r=sf(t);i==t&&(s==-1?(i*=e,t/=e):(i/=e,t*=e));let o=e==10?Qi:Lf,a=s==1?ii:pi,c=r==1?pi:ii,l=a(o(gn(i))),u=c(o(gn(t))),h=br(e,l),d=br(e,u);return e==10&&(l<0&&(h=Oe(h,-l)),u<0&&(d=Oe(d,-u))),n||e==2?(i=h*s,t=d*r):(i=Ff(i,h),t=Ua(t,d)),[i,t]}function Ih(i,t,e,n){let s=Na(i,t,e,n);return i==0&&(s[0]=0),t==0&&(s[1]=0),s}var Lh=.1,ef={mode:3,pad:Lh},So={pad:0,soft:null,mode:0},E0={min:So,max:So};function Ia(i,t,e,n){return Fa(e)?nf(i,t,e):(So.pad=e,So.soft=n?0:null,So.mode=n?3:0,nf(i,t,E0))}function Se(i,t){return i??t}function T0(i,t,e){for(t=Se(t,0),e=Se(e,i.length-1);t<=e;){if(i[t]!=null)return!0;t++}return!1}function nf(i,t,e){let n=e.min,s=e.max,r=Se(n.pad,0),o=Se(s.pad,0),a=Se(n.hard,-Fe),c=Se(s.hard,Fe),l=Se(n.soft,Fe),u=Se(s.soft,-Fe),h=Se(n.mode,0),d=Se(s.mode,0),f=t-i,g=Qi(f),v=Wn(gn(i),gn(t)),p=Qi(v),m=gn(p-g);(f<1e-24||m>10)&&(f=0,(i==0||t==0)&&(f=1e-24,h==2&&l!=Fe&&(r=0),d==2&&u!=-Fe&&(o=0)));let y=f||v||1e3,A=Qi(y),M=br(10,ii(A)),R=y*(f==0?i==0?.1:1:r),E=Oe(Ff(i-R,M/10),24),_=i>=l&&(h==1||h==3&&E<=l||h==2&&E>=l)?l:Fe,T=Wn(a,E<_&&i>=_?_:Si(_,E)),O=y*(f==0?t==0?.1:1:o),N=Oe(Ua(t+O,M/10),24),I=t<=u&&(d==1||d==3&&N>=u||d==2&&N<=u)?u:-Fe,V=Si(c,N>I&&t<=I?I:Wn(I,N));return T==V&&T==0&&(V=100),[T,V]}var A0=new Intl.NumberFormat(Ar?M0.language:"en-US"),Dh=i=>A0.format(i),si=Math,Ca=si.PI,gn=si.abs,ii=si.floor,mn=si.round,pi=si.ceil,Si=si.min,Wn=si.max,br=si.pow,sf=si.sign,Qi=si.log10,Lf=si.log2,R0=(i,t=1)=>si.sinh(i)*t,ph=(i,t=1)=>si.asinh(i/t),Fe=1/0;function rf(i){return(Qi((i^i>>31)-(i>>31))|0)+1}function Sh(i,t,e){return Si(Wn(i,t),e)}function Df(i){return typeof i=="function"}function xe(i){return Df(i)?i:()=>i}var C0=()=>{},Nf=i=>i,Uf=(i,t)=>t,P0=i=>null,of=i=>!0,af=(i,t)=>i==t,I0=/\.\d*?(?=9{6,}|0{6,})/gm,Ys=i=>{if(Bf(i)||bs.has(i))return i;let t=`${i}`,e=t.match(I0);if(e==null)return i;let n=e[0].length-1;if(t.indexOf("e-")!=-1){let[s,r]=t.split("e");return+`${Ys(s)}e${r}`}return Oe(i,n)};function Hs(i,t){return Ys(Oe(Ys(i/t))*t)}function Ua(i,t){return Ys(pi(Ys(i/t))*t)}function Ff(i,t){return Ys(ii(Ys(i/t))*t)}function Oe(i,t=0){if(Bf(i))return i;let e=10**t,n=i*e*(1+Number.EPSILON);return mn(n)/e}var bs=new Map;function Of(i){return((""+i).split(".")[1]||"").length}function wo(i,t,e,n){let s=[],r=n.map(Of);for(let o=t;o<e;o++){let a=gn(o),c=Oe(br(i,o),a);for(let l=0;l<n.length;l++){let u=i==10?+`${n[l]}e${o}`:n[l]*c,h=(o>=0?0:a)+(o>=r[l]?0:r[l]),d=i==10?u:Oe(u,h);s.push(d),bs.set(d,h)}}return s}var bo={},Nh=[],wr=[null,null],Ss=Array.isArray,Bf=Number.isInteger,L0=i=>i===void 0;function lf(i){return typeof i=="string"}function Fa(i){let t=!1;if(i!=null){let e=i.constructor;t=e==null||e==Object}return t}function D0(i){return i!=null&&typeof i=="object"}var N0=Object.getPrototypeOf(Uint8Array),kf="__proto__";function Er(i,t=Fa){let e;if(Ss(i)){let n=i.find(s=>s!=null);if(Ss(n)||t(n)){e=Array(i.length);for(let s=0;s<i.length;s++)e[s]=Er(i[s],t)}else e=i.slice()}else if(i instanceof N0)e=i.slice();else if(t(i)){e={};for(let n in i)n!=kf&&(e[n]=Er(i[n],t))}else e=i;return e}function cn(i){let t=arguments;for(let e=1;e<t.length;e++){let n=t[e];for(let s in n)s!=kf&&(Fa(i[s])?cn(i[s],Er(n[s])):i[s]=Er(n[s]))}return i}var U0=0,F0=1,O0=2;function B0(i,t,e){for(let n=0,s,r=-1;n<t.length;n++){let o=t[n];if(o>r){for(s=o-1;s>=0&&i[s]==null;)i[s--]=null;for(s=o+1;s<e&&i[s]==null;)i[r=s++]=null}}}function k0(i,t){if(G0(i)){let o=i[0].slice();for(let a=1;a<i.length;a++)o.push(...i[a].slice(1));return H0(o[0])||(o=V0(o)),o}let e=new Set;for(let o=0;o<i.length;o++){let c=i[o][0],l=c.length;for(let u=0;u<l;u++)e.add(c[u])}let n=[Array.from(e).sort((o,a)=>o-a)],s=n[0].length,r=new Map;for(let o=0;o<s;o++)r.set(n[0][o],o);for(let o=0;o<i.length;o++){let a=i[o],c=a[0];for(let l=1;l<a.length;l++){let u=a[l],h=Array(s).fill(void 0),d=t?t[o][l]:F0,f=[];for(let g=0;g<u.length;g++){let v=u[g],p=r.get(c[g]);v===null?d!=U0&&(h[p]=v,d==O0&&f.push(p)):h[p]=v}B0(h,f,s),n.push(h)}}return n}var z0=typeof queueMicrotask>"u"?i=>Promise.resolve().then(i):queueMicrotask;function V0(i){let t=i[0],e=t.length,n=Array(e);for(let r=0;r<n.length;r++)n[r]=r;n.sort((r,o)=>t[r]-t[o]);let s=[];for(let r=0;r<i.length;r++){let o=i[r],a=Array(e);for(let c=0;c<e;c++)a[c]=o[n[c]];s.push(a)}return s}function G0(i){let t=i[0][0],e=t.length;for(let n=1;n<i.length;n++){let s=i[n][0];if(s.length!=e)return!1;if(s!=t){for(let r=0;r<e;r++)if(s[r]!=t[r])return!1}}return!0}function H0(i,t=100){let e=i.length;if(e<=1)return!0;let n=0,s=e-1;for(;n<=s&&i[n]==null;)n++;for(;s>=n&&i[s]==null;)s--;if(s<=n)return!0;let r=Wn(1,ii((s-n+1)/t));for(let o=i[n],a=n+r;a<=s;a+=r){let c=i[a];if(c!=null){if(c<=o)return!1;o=c}}return!0}var zf=["January","February","March","April","May","June","July","August","September","October","November","December"],Vf=["Sunday","Monday","Tuesday","Wednesday","Thursday","Friday","Saturday"];function Gf(i){return i.slice(0,3)}var W0=Vf.map(Gf),X0=zf.map(Gf),q0={MMMM:zf,MMM:X0,WWWW:Vf,WWW:W0};function xo(i){return(i<10?"0":"")+i}function Y0(i){return(i<10?"00":i<100?"0":"")+i}var $0={YYYY:i=>i.getFullYear(),YY:i=>(i.getFullYear()+"").slice(2),MMMM:(i,t)=>t.MMMM[i.getMonth()],MMM:(i,t)=>t.MMM[i.getMonth()],MM:i=>xo(i.getMonth()+1),M:i=>i.getMonth()+1,DD:i=>xo(i.getDate()),D:i=>i.getDate(),WWWW:(i,t)=>t.WWWW[i.getDay()],WWW:(i,t)=>t.WWW[i.getDay()],HH:i=>xo(i.getHours()),H:i=>i.getHours(),h:i=>{let t=i.getHours();return t==0?12:t>12?t-12:t},AA:i=>i.getHours()>=12?"PM":"AM",aa:i=>i.getHours()>=12?"pm":"am",a:i=>i.getHours()>=12?"p":"a",mm:i=>xo(i.getMinutes()),m:i=>i.getMinutes(),ss:i=>xo(i.getSeconds()),s:i=>i.getSeconds(),fff:i=>Y0(i.getMilliseconds())};function Uh(i,t){t=t||q0;let e=[],n=/\{([a-z]+)\}|[^{]+/gi,s;for(;s=n.exec(i);)e.push(s[0][0]=="{"?$0[s[1]]:s[0]);return r=>{let o="";for(let a=0;a<e.length;a++)o+=typeof e[a]=="string"?e[a]:e[a](r,t);return o}}var Z0=new Intl.DateTimeFormat().resolvedOptions().timeZone;function J0(i,t){let e;return t=="UTC"||t=="Etc/UTC"?e=new Date(+i+i.getTimezoneOffset()*6e4):t==Z0?e=i:(e=new Date(i.toLocaleString("en-US",{timeZone:t})),e.setMilliseconds(i.getMilliseconds())),e}var Hf=i=>i%1==0,La=[1,2,2.5,5],K0=wo(10,-32,0,La),Wf=wo(10,0,32,La),j0=Wf.filter(Hf),Ws=K0.concat(Wf),Fh=`
`,Xf="{YYYY}",cf=Fh+Xf,qf="{M}/{D}",Mo=Fh+qf,Aa=Mo+"/{YY}",Yf="{aa}",Q0="{h}:{mm}",Mr=Q0+Yf,hf=Fh+Mr,uf=":{ss}",Ae=null;function $f(i){let t=i*1e3,e=t*60,n=e*60,s=n*24,r=s*30,o=s*365,c=(i==1?wo(10,0,3,La).filter(Hf):wo(10,-3,0,La)).concat([t,t*5,t*10,t*15,t*30,e,e*5,e*10,e*15,e*30,n,n*2,n*3,n*4,n*6,n*8,n*12,s,s*2,s*3,s*4,s*5,s*6,s*7,s*8,s*9,s*10,s*15,r,r*2,r*3,r*4,r*6,o,o*2,o*5,o*10,o*25,o*50,o*100]),l=[[o,Xf,Ae,Ae,Ae,Ae,Ae,Ae,1],[s*28,"{MMM}",cf,Ae,Ae,Ae,Ae,Ae,1],[s,qf,cf,Ae,Ae,Ae,Ae,Ae,1],[n,"{h}"+Yf,Aa,Ae,Mo,Ae,Ae,Ae,1],[e,Mr,Aa,Ae,Mo,Ae,Ae,Ae,1],[t,uf,Aa+" "+Mr,Ae,Mo+" "+Mr,Ae,hf,Ae,1],[i,uf+".{fff}",Aa+" "+Mr,Ae,Mo+" "+Mr,Ae,hf,Ae,1]];function u(h){return(d,f,g,v,p,m)=>{let y=[],A=p>=o,M=p>=r&&p<o,R=h(g),E=Oe(R*i,3),_=mh(R.getFullYear(),A?0:R.getMonth(),M||A?1:R.getDate()),T=Oe(_*i,3);if(M||A){let O=M?p/r:0,N=A?p/o:0,I=E==T?E:Oe(mh(_.getFullYear()+N,_.getMonth()+O,1)*i,3),V=new Date(mn(I/i)),G=V.getFullYear(),D=V.getMonth();for(let H=0;I<=v;H++){let Y=mh(G+N*H,D+O*H,1),B=Y-h(Oe(Y*i,3));I=Oe((+Y+B)*i,3),I<=v&&y.push(I)}}else{let O=p>=s?s:p,N=ii(g)-ii(E),I=T+N+Ua(E-T,O);y.push(I);let V=h(I),G=V.getHours()+V.getMinutes()/e+V.getSeconds()/n,D=p/n,H=d.axes[f]._space,Y=m/H;for(;I=Oe(I+p,i==1?0:3),!(I>v);)if(D>1){let B=ii(Oe(G+D,6))%24,K=h(I).getHours()-B;K>1&&(K=-1),I-=K*n,G=(G+D)%24;let tt=y[y.length-1];Oe((I-tt)/p,3)*Y>=.7&&y.push(I)}else y.push(I)}return y}}return[c,l,u]}var[t_,e_,n_]=$f(1),[i_,s_,r_]=$f(.001);wo(2,-53,53,[1]);function df(i,t){return i.map(e=>e.map((n,s)=>s==0||s==8||n==null?n:t(s==1||e[8]==0?n:e[1]+n)))}function ff(i,t){return(e,n,s,r,o)=>{let a=t.find(g=>o>=g[0])||t[t.length-1],c,l,u,h,d,f;return n.map(g=>{let v=i(g),p=v.getFullYear(),m=v.getMonth(),y=v.getDate(),A=v.getHours(),M=v.getMinutes(),R=v.getSeconds(),E=p!=c&&a[2]||m!=l&&a[3]||y!=u&&a[4]||A!=h&&a[5]||M!=d&&a[6]||R!=f&&a[7]||a[1];return c=p,l=m,u=y,h=A,d=M,f=R,E(v)})}}function o_(i,t){let e=Uh(t);return(n,s,r,o,a)=>s.map(c=>e(i(c)))}function mh(i,t,e){return new Date(i,t,e)}function pf(i,t){return t(i)}var a_="{YYYY}-{MM}-{DD} {h}:{mm}{aa}";function mf(i,t){return(e,n,s,r)=>r==null?Ch:t(i(n))}function l_(i,t){let e=i.series[t];return e.width?e.stroke(i,t):e.points.width?e.points.stroke(i,t):null}function c_(i,t){return i.series[t].fill(i,t)}var h_={show:!0,live:!0,isolate:!1,mount:C0,markers:{show:!0,width:2,stroke:l_,fill:c_,dash:"solid"},idx:null,idxs:null,values:[]};function u_(i,t){let e=i.cursor.points,n=fi(),s=e.size(i,t);He(n,yo,s),He(n,vo,s);let r=s/-2;He(n,"marginLeft",r),He(n,"marginTop",r);let o=e.width(i,t,s);return o&&He(n,"borderWidth",o),n}function d_(i,t){let e=i.series[t].points;return e._fill||e._stroke}function f_(i,t){let e=i.series[t].points;return e._stroke||e._fill}function p_(i,t){return i.series[t].points.size}var gh=[0,0];function m_(i,t,e){return gh[0]=t,gh[1]=e,gh}function Ra(i,t,e,n=!0){return s=>{s.button==0&&(!n||s.target==t)&&e(s)}}function _h(i,t,e,n=!0){return s=>{(!n||s.target==t)&&e(s)}}var g_={show:!0,x:!0,y:!0,lock:!1,move:m_,points:{one:!1,show:u_,size:p_,width:0,stroke:f_,fill:d_},bind:{mousedown:Ra,mouseup:Ra,click:Ra,dblclick:Ra,mousemove:_h,mouseleave:_h,mouseenter:_h},drag:{setScale:!0,x:!0,y:!1,dist:0,uni:null,click:(i,t)=>{t.stopPropagation(),t.stopImmediatePropagation()},_x:!1,_y:!1},focus:{dist:(i,t,e,n,s)=>n-s,prox:-1,bias:0},hover:{skip:[void 0],prox:null,bias:0},left:-10,top:-10,idx:null,dataIdx:null,idxs:null,event:null},Zf={show:!0,stroke:"rgba(0,0,0,0.07)",width:2},Oh=cn({},Zf,{filter:Uf}),Jf=cn({},Oh,{size:10}),Kf=cn({},Zf,{show:!1}),Bh='12px system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Noto Sans", sans-serif, "Apple Color Emoji", "Segoe UI Emoji", "Segoe UI Symbol", "Noto Color Emoji"',jf="bold "+Bh,Qf=1.5,gf={show:!0,scale:"x",stroke:Rh,space:50,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:jf,side:2,grid:Oh,ticks:Jf,border:Kf,font:Bh,lineGap:Qf,rotate:0},__="Value",x_="Time",_f={show:!0,scale:"x",auto:!1,sorted:1,min:Fe,max:-Fe,idxs:[]};function y_(i,t,e,n,s){return t.map(r=>r==null?"":Dh(r))}function v_(i,t,e,n,s,r,o){let a=[],c=bs.get(s)||0;e=o?e:Oe(Ua(e,s),c);for(let l=e;l<=n;l=Oe(l+s,c))a.push(Object.is(l,-0)?0:l);return a}function bh(i,t,e,n,s,r,o){let a=[],c=i.scales[i.axes[t].scale].log,l=c==10?Qi:Lf,u=ii(l(e));s=br(c,u),c==10&&(s=Ws[Mi(s,Ws)]);let h=e,d=s*c;c==10&&(d=Ws[Mi(d,Ws)]);do a.push(h),h=h+s,c==10&&!bs.has(h)&&(h=Oe(h,bs.get(s))),h>=d&&(s=h,d=s*c,c==10&&(d=Ws[Mi(d,Ws)]));while(h<=n);return a}function M_(i,t,e,n,s,r,o){let c=i.scales[i.axes[t].scale].asinh,l=n>c?bh(i,t,Wn(c,e),n,s):[c],u=n>=0&&e<=0?[0]:[];return(e<-c?bh(i,t,Wn(c,-n),-e,s):[c]).reverse().map(d=>-d).concat(u,l)}var tp=/./,S_=/[12357]/,b_=/[125]/,xf=/1/,wh=(i,t,e,n)=>i.map((s,r)=>t==4&&s==0||r%n==0&&e.test(s.toExponential()[s<0?1:0])?s:null);function w_(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=i.scales[o],c=i.valToPos,l=r._space,u=c(10,o),h=c(9,o)-u>=l?tp:c(7,o)-u>=l?S_:c(5,o)-u>=l?b_:xf;if(h==xf){let d=gn(c(1,o)-u);if(d<l)return wh(t.slice().reverse(),a.distr,h,pi(l/d)).reverse()}return wh(t,a.distr,h,1)}function E_(i,t,e,n,s){let r=i.axes[e],o=r.scale,a=r._space,c=i.valToPos,l=gn(c(1,o)-c(2,o));return l<a?wh(t.slice().reverse(),3,tp,pi(a/l)).reverse():t}function T_(i,t,e,n){return n==null?Ch:t==null?"":Dh(t)}var yf={show:!0,scale:"y",stroke:Rh,space:30,gap:5,alignTo:1,size:50,labelGap:0,labelSize:30,labelFont:jf,side:3,grid:Oh,ticks:Jf,border:Kf,font:Bh,lineGap:Qf,rotate:0};function A_(i,t){let e=3+(i||1)*2;return Oe(e*t,3)}function R_(i,t){let{scale:e,idxs:n}=i.series[0],s=i._data[0],r=i.valToPos(s[n[0]],e,!0),o=i.valToPos(s[n[1]],e,!0),a=gn(o-r),c=i.series[t],l=a/(c.points.space*we);return n[1]-n[0]<=l}var vf={scale:null,auto:!0,sorted:0,min:Fe,max:-Fe},ep=(i,t,e,n,s)=>s,Mf={show:!0,auto:!0,sorted:0,gaps:ep,alpha:1,facets:[cn({},vf,{scale:"x"}),cn({},vf,{scale:"y"})]},Sf={scale:"y",auto:!0,sorted:0,show:!0,spanGaps:!1,gaps:ep,alpha:1,points:{show:R_,filter:null},values:null,min:Fe,max:-Fe,idxs:[],path:null,clip:null};function C_(i,t,e,n,s){return e/10}var np={time:!0,auto:!0,distr:1,log:10,asinh:1,min:null,max:null,dir:1,ori:0},P_=cn({},np,{time:!1,ori:1}),bf={};function ip(i,t){let e=bf[i];return e||(e={key:i,plots:[],sub(n){e.plots.push(n)},unsub(n){e.plots=e.plots.filter(s=>s!=n)},pub(n,s,r,o,a,c,l){for(let u=0;u<e.plots.length;u++)e.plots[u]!=s&&e.plots[u].pub(n,s,r,o,a,c,l)}},i!=null&&(bf[i]=e)),e}var Tr=1,Eh=2;function $s(i,t,e){let n=i.mode,s=i.series[t],r=n==2?i._data[t]:i._data,o=i.scales,a=i.bbox,c=r[0],l=n==2?r[1]:r[t],u=n==2?o[s.facets[0].scale]:o[i.series[0].scale],h=n==2?o[s.facets[1].scale]:o[s.scale],d=a.left,f=a.top,g=a.width,v=a.height,p=i.valToPosH,m=i.valToPosV;return u.ori==0?e(s,c,l,u,h,p,m,d,f,g,v,Ba,Rr,za,rp,ap):e(s,c,l,u,h,m,p,f,d,v,g,ka,Cr,Vh,op,lp)}function kh(i,t){let e=0,n=0,s=Se(i.bands,Nh);for(let r=0;r<s.length;r++){let o=s[r];o.series[0]==t?e=o.dir:o.series[1]==t&&(o.dir==1?n|=1:n|=2)}return[e,n==1?-1:n==2?1:n==3?2:0]}function I_(i,t,e,n,s){let r=i.mode,o=i.series[t],a=r==2?o.facets[1].scale:o.scale,c=i.scales[a];return s==-1?c.min:s==1?c.max:c.distr==3?c.dir==1?c.min:c.max:0}function ts(i,t,e,n,s,r){return $s(i,t,(o,a,c,l,u,h,d,f,g,v,p)=>{let m=o.pxRound,y=l.dir*(l.ori==0?1:-1),A=l.ori==0?Rr:Cr,M,R;y==1?(M=e,R=n):(M=n,R=e);let E=m(h(a[M],l,v,f)),_=m(d(c[M],u,p,g)),T=m(h(a[R],l,v,f)),O=m(d(r==1?u.max:u.min,u,p,g)),N=new Path2D(s);return A(N,T,O),A(N,E,O),A(N,E,_),N})}function Oa(i,t,e,n,s,r){let o=null;if(i.length>0){o=new Path2D;let a=t==0?za:Vh,c=e;for(let h=0;h<i.length;h++){let d=i[h];if(d[1]>d[0]){let f=d[0]-c;f>0&&a(o,c,n,f,n+r),c=d[1]}}let l=e+s-c,u=10;l>0&&a(o,c,n-u/2,l,n+r+u)}return o}function L_(i,t,e){let n=i[i.length-1];n&&n[0]==t?n[1]=e:i.push([t,e])}function zh(i,t,e,n,s,r,o){let a=[],c=i.length;for(let l=s==1?e:n;l>=e&&l<=n;l+=s)if(t[l]===null){let h=l,d=l;if(s==1)for(;++l<=n&&t[l]===null;)d=l;else for(;--l>=e&&t[l]===null;)d=l;let f=r(i[h]),g=d==h?f:r(i[d]),v=h-s;f=o<=0&&v>=0&&v<c?r(i[v]):f;let m=d+s;g=o>=0&&m>=0&&m<c?r(i[m]):g,g>=f&&a.push([f,g])}return a}function wf(i){return i==0?Nf:i==1?mn:t=>Hs(t,i)}function sp(i){let t=i==0?Ba:ka,e=i==0?(s,r,o,a,c,l)=>{s.arcTo(r,o,a,c,l)}:(s,r,o,a,c,l)=>{s.arcTo(o,r,c,a,l)},n=i==0?(s,r,o,a,c)=>{s.rect(r,o,a,c)}:(s,r,o,a,c)=>{s.rect(o,r,c,a)};return(s,r,o,a,c,l=0,u=0)=>{l==0&&u==0?n(s,r,o,a,c):(l=Si(l,a/2,c/2),u=Si(u,a/2,c/2),t(s,r+l,o),e(s,r+a,o,r+a,o+c,l),e(s,r+a,o+c,r,o+c,u),e(s,r,o+c,r,o,u),e(s,r,o,r+a,o,l),s.closePath())}}var Ba=(i,t,e)=>{i.moveTo(t,e)},ka=(i,t,e)=>{i.moveTo(e,t)},Rr=(i,t,e)=>{i.lineTo(t,e)},Cr=(i,t,e)=>{i.lineTo(e,t)},za=sp(0),Vh=sp(1),rp=(i,t,e,n,s,r)=>{i.arc(t,e,n,s,r)},op=(i,t,e,n,s,r)=>{i.arc(e,t,n,s,r)},ap=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(t,e,n,s,r,o)},lp=(i,t,e,n,s,r,o)=>{i.bezierCurveTo(e,t,s,n,o,r)};function cp(i){return(t,e,n,s,r)=>$s(t,e,(o,a,c,l,u,h,d,f,g,v,p)=>{let{pxRound:m,points:y}=o,A,M;l.ori==0?(A=Ba,M=rp):(A=ka,M=op);let R=Oe(y.width*we,3),E=(y.size-y.width)/2*we,_=Oe(E*2,3),T=new Path2D,O=new Path2D,{left:N,top:I,width:V,height:G}=t.bbox;za(O,N-_,I-_,V+_*2,G+_*2);let D=H=>{if(c[H]!=null){let Y=m(h(a[H],l,v,f)),B=m(d(c[H],u,p,g));A(T,Y+E,B),M(T,Y,B,E,0,Ca*2)}};if(r)r.forEach(D);else for(let H=n;H<=s;H++)D(H);return{stroke:R>0?T:null,fill:T,clip:O,flags:Tr|Eh}})}function hp(i){return(t,e,n,s,r,o)=>{n!=s&&(r!=n&&o!=n&&i(t,e,n),r!=s&&o!=s&&i(t,e,s),i(t,e,o))}}var D_=hp(Rr),N_=hp(Cr);function up(i){let t=Se(i?.alignGaps,0);return(e,n,s,r)=>$s(e,n,(o,a,c,l,u,h,d,f,g,v,p)=>{[s,r]=Da(c,s,r);let m=o.pxRound,y=G=>m(h(G,l,v,f)),A=G=>m(d(G,u,p,g)),M,R;l.ori==0?(M=Rr,R=D_):(M=Cr,R=N_);let E=l.dir*(l.ori==0?1:-1),_={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Tr},T=_.stroke,O=!1;if(r-s>=v*4){let G=ct=>e.posToVal(ct,l.key,!0),D=null,H=null,Y,B,lt,Z=y(a[E==1?s:r]),K=y(a[s]),tt=y(a[r]),ut=G(E==1?K+1:tt-1);for(let ct=E==1?s:r;ct>=s&&ct<=r;ct+=E){let j=a[ct],it=(E==1?j<ut:j>ut)?Z:y(j),pt=c[ct];it==Z?pt!=null?(B=pt,D==null?(M(T,it,A(B)),Y=D=H=B):B<D?D=B:B>H&&(H=B)):pt===null&&(O=!0):(D!=null&&R(T,Z,A(D),A(H),A(Y),A(B)),pt!=null?(B=pt,M(T,it,A(B)),D=H=Y=B):(D=H=null,pt===null&&(O=!0)),Z=it,ut=G(Z+E))}D!=null&&D!=H&&lt!=Z&&R(T,Z,A(D),A(H),A(Y),A(B))}else for(let G=E==1?s:r;G>=s&&G<=r;G+=E){let D=c[G];D===null?O=!0:D!=null&&M(T,y(a[G]),A(D))}let[I,V]=kh(e,n);if(o.fill!=null||I!=0){let G=_.fill=new Path2D(T),D=o.fillTo(e,n,o.min,o.max,I),H=A(D),Y=y(a[s]),B=y(a[r]);E==-1&&([B,Y]=[Y,B]),M(G,B,H),M(G,Y,H)}if(!o.spanGaps){let G=[];O&&G.push(...zh(a,c,s,r,E,y,t)),_.gaps=G=o.gaps(e,n,s,r,G),_.clip=Oa(G,l.ori,f,g,v,p)}return V!=0&&(_.band=V==2?[ts(e,n,s,r,T,-1),ts(e,n,s,r,T,1)]:ts(e,n,s,r,T,V)),_})}function U_(i){let t=Se(i.align,1),e=Se(i.ascDesc,!1),n=Se(i.alignGaps,0),s=Se(i.extend,!1);return(r,o,a,c)=>$s(r,o,(l,u,h,d,f,g,v,p,m,y,A)=>{[a,c]=Da(h,a,c);let M=l.pxRound,{left:R,width:E}=r.bbox,_=K=>M(g(K,d,y,p)),T=K=>M(v(K,f,A,m)),O=d.ori==0?Rr:Cr,N={stroke:new Path2D,fill:null,clip:null,band:null,gaps:null,flags:Tr},I=N.stroke,V=d.dir*(d.ori==0?1:-1),G=T(h[V==1?a:c]),D=_(u[V==1?a:c]),H=D,Y=D;s&&t==-1&&(Y=R,O(I,Y,G)),O(I,D,G);for(let K=V==1?a:c;K>=a&&K<=c;K+=V){let tt=h[K];if(tt==null)continue;let ut=_(u[K]),ct=T(tt);t==1?O(I,ut,G):O(I,H,ct),O(I,ut,ct),G=ct,H=ut}let B=H;s&&t==1&&(B=R+E,O(I,B,G));let[lt,Z]=kh(r,o);if(l.fill!=null||lt!=0){let K=N.fill=new Path2D(I),tt=l.fillTo(r,o,l.min,l.max,lt),ut=T(tt);O(K,B,ut),O(K,Y,ut)}if(!l.spanGaps){let K=[];K.push(...zh(u,h,a,c,V,_,n));let tt=l.width*we/2,ut=e||t==1?tt:-tt,ct=e||t==-1?-tt:tt;K.forEach(j=>{j[0]+=ut,j[1]+=ct}),N.gaps=K=l.gaps(r,o,a,c,K),N.clip=Oa(K,d.ori,p,m,y,A)}return Z!=0&&(N.band=Z==2?[ts(r,o,a,c,I,-1),ts(r,o,a,c,I,1)]:ts(r,o,a,c,I,Z)),N})}function Ef(i,t,e,n,s,r,o=Fe){if(i.length>1){let a=null;for(let c=0,l=1/0;c<i.length;c++)if(t[c]!==void 0){if(a!=null){let u=gn(i[c]-i[a]);u<l&&(l=u,o=gn(e(i[c],n,s,r)-e(i[a],n,s,r)))}a=c}}return o}function F_(i){i=i||bo;let t=Se(i.size,[.6,Fe,1]),e=i.align||0,n=i.gap||0,s=i.radius;s=s==null?[0,0]:typeof s=="number"?[s,0]:s;let r=xe(s),o=1-t[0],a=Se(t[1],Fe),c=Se(t[2],1),l=Se(i.disp,bo),u=Se(i.each,f=>{}),{fill:h,stroke:d}=l;return(f,g,v,p)=>$s(f,g,(m,y,A,M,R,E,_,T,O,N,I)=>{let V=m.pxRound,G=e,D=n*we,H=a*we,Y=c*we,B,lt;M.ori==0?[B,lt]=r(f,g):[lt,B]=r(f,g);let Z=M.dir*(M.ori==0?1:-1),K=M.ori==0?za:Vh,tt=M.ori==0?u:(Ct,Jt,oe,wt,Ue,Ht,Yt)=>{u(Ct,Jt,oe,Ue,wt,Yt,Ht)},ut=Se(f.bands,Nh).find(Ct=>Ct.series[0]==g),ct=ut!=null?ut.dir:0,j=m.fillTo(f,g,m.min,m.max,ct),gt=V(_(j,R,I,O)),it,pt,mt,Ft=N,Wt=V(m.width*we),Vt=!1,le=null,ce=null,Kt=null,Ce=null;h!=null&&(Wt==0||d!=null)&&(Vt=!0,le=h.values(f,g,v,p),ce=new Map,new Set(le).forEach(Ct=>{Ct!=null&&ce.set(Ct,new Path2D)}),Wt>0&&(Kt=d.values(f,g,v,p),Ce=new Map,new Set(Kt).forEach(Ct=>{Ct!=null&&Ce.set(Ct,new Path2D)})));let{x0:Te,size:qe}=l;if(Te!=null&&qe!=null){G=1,y=Te.values(f,g,v,p),Te.unit==2&&(y=y.map(oe=>f.posToVal(T+oe*N,M.key,!0)));let Ct=qe.values(f,g,v,p);qe.unit==2?pt=Ct[0]*N:pt=E(Ct[0],M,N,T)-E(0,M,N,T),Ft=Ef(y,A,E,M,N,T,Ft),mt=Ft-pt+D}else Ft=Ef(y,A,E,M,N,T,Ft),mt=Ft*o+D,pt=Ft-mt;mt<1&&(mt=0),Wt>=pt/2&&(Wt=0),mt<5&&(V=Nf);let De=mt>0,vn=Ft-mt-(De?Wt:0);pt=V(Sh(vn,Y,H)),it=(G==0?pt/2:G==Z?0:pt)-G*Z*((G==0?D/2:0)+(De?Wt/2:0));let ve={stroke:null,fill:null,clip:null,band:null,gaps:null,flags:0},fn=Vt?null:new Path2D,Je=null;if(ut!=null)Je=f.data[ut.series[1]];else{let{y0:Ct,y1:Jt}=l;Ct!=null&&Jt!=null&&(A=Jt.values(f,g,v,p),Je=Ct.values(f,g,v,p))}let sn=B*pt,F=lt*pt;for(let Ct=Z==1?v:p;Ct>=v&&Ct<=p;Ct+=Z){let Jt=A[Ct];if(Jt==null)continue;if(Je!=null){let X=Je[Ct]??0;if(Jt-X==0)continue;gt=_(X,R,I,O)}let oe=M.distr!=2||l!=null?y[Ct]:Ct,wt=E(oe,M,N,T),Ue=_(Se(Jt,j),R,I,O),Ht=V(wt-it),Yt=V(Wn(Ue,gt)),C=V(Si(Ue,gt)),S=Yt-C;if(Jt!=null){let X=Jt<0?F:sn,dt=Jt<0?sn:F;Vt?(Wt>0&&Kt[Ct]!=null&&K(Ce.get(Kt[Ct]),Ht,C+ii(Wt/2),pt,Wn(0,S-Wt),X,dt),le[Ct]!=null&&K(ce.get(le[Ct]),Ht,C+ii(Wt/2),pt,Wn(0,S-Wt),X,dt)):K(fn,Ht,C+ii(Wt/2),pt,Wn(0,S-Wt),X,dt),tt(f,g,Ct,Ht-Wt/2,C,pt+Wt,S)}}return Wt>0?ve.stroke=Vt?Ce:fn:Vt||(ve._fill=m.width==0?m._fill:m._stroke??m._fill,ve.width=0),ve.fill=Vt?ce:fn,ve})}function O_(i,t){let e=Se(t?.alignGaps,0);return(n,s,r,o)=>$s(n,s,(a,c,l,u,h,d,f,g,v,p,m)=>{[r,o]=Da(l,r,o);let y=a.pxRound,A=B=>y(d(B,u,p,g)),M=B=>y(f(B,h,m,v)),R,E,_;u.ori==0?(R=Ba,_=Rr,E=ap):(R=ka,_=Cr,E=lp);let T=u.dir*(u.ori==0?1:-1),O=A(c[T==1?r:o]),N=O,I=[],V=[];for(let B=T==1?r:o;B>=r&&B<=o;B+=T)if(l[B]!=null){let Z=c[B],K=A(Z);I.push(N=K),V.push(M(l[B]))}let G={stroke:i(I,V,R,_,E,y),fill:null,clip:null,band:null,gaps:null,flags:Tr},D=G.stroke,[H,Y]=kh(n,s);if(a.fill!=null||H!=0){let B=G.fill=new Path2D(D),lt=a.fillTo(n,s,a.min,a.max,H),Z=M(lt);_(B,N,Z),_(B,O,Z)}if(!a.spanGaps){let B=[];B.push(...zh(c,l,r,o,T,A,e)),G.gaps=B=a.gaps(n,s,r,o,B),G.clip=Oa(B,u.ori,g,v,p,m)}return Y!=0&&(G.band=Y==2?[ts(n,s,r,o,D,-1),ts(n,s,r,o,D,1)]:ts(n,s,r,o,D,Y)),G})}function B_(i){return O_(k_,i)}function k_(i,t,e,n,s,r){let o=i.length;if(o<2)return null;let a=new Path2D;if(e(a,i[0],t[0]),o==2)n(a,i[1],t[1]);else{let c=Array(o),l=Array(o-1),u=Array(o-1),h=Array(o-1);for(let d=0;d<o-1;d++)u[d]=t[d+1]-t[d],h[d]=i[d+1]-i[d],l[d]=u[d]/h[d];c[0]=l[0];for(let d=1;d<o-1;d++)l[d]===0||l[d-1]===0||l[d-1]>0!=l[d]>0?c[d]=0:(c[d]=3*(h[d-1]+h[d])/((2*h[d]+h[d-1])/l[d-1]+(h[d]+2*h[d-1])/l[d]),isFinite(c[d])||(c[d]=0));c[o-1]=l[o-2];for(let d=0;d<o-1;d++)s(a,i[d]+h[d]/3,t[d]+c[d]*h[d]/3,i[d+1]-h[d]/3,t[d+1]-c[d+1]*h[d]/3,i[d+1],t[d+1])}return a}var Th=new Set;function Tf(){for(let i of Th)i.syncRect(!0)}Ar&&(qs(y0,Sr,Tf),qs(v0,Sr,Tf,!0),qs(Pa,Sr,()=>{En.pxRatio=we}));var z_=up(),V_=cp();function Af(i,t,e,n){return(n?[i[0],i[1]].concat(i.slice(2)):[i[0]].concat(i.slice(1))).map((r,o)=>Ah(r,o,t,e))}function G_(i,t){return i.map((e,n)=>n==0?{}:cn({},t,e))}function Ah(i,t,e,n){return cn({},t==0?e:n,i)}function dp(i,t,e){return t==null?wr:[t,e]}var H_=dp;function W_(i,t,e){return t==null?wr:Ia(t,e,Lh,!0)}function fp(i,t,e,n){return t==null?wr:Na(t,e,i.scales[n].log,!1)}var X_=fp;function pp(i,t,e,n){return t==null?wr:Ih(t,e,i.scales[n].log,!1)}var q_=pp;function Y_(i,t,e,n,s){let r=Wn(rf(i),rf(t)),o=t-i,a=Mi(s/n*o,e);do{let c=e[a],l=n*c/o;if(l>=s&&r+(c<5?bs.get(c):0)<=17)return[c,l]}while(++a<e.length);return[0,0]}function Rf(i){let t,e;return i=i.replace(/(\d+)px/,(n,s)=>(t=mn((e=+s)*we))+"px"),[i,t,e]}function $_(i){i.show&&[i.font,i.labelFont].forEach(t=>{let e=Oe(t[2]*we,1);t[0]=t[0].replace(/[0-9.]+px/,e+"px"),t[1]=e})}function En(i,t,e){let n={mode:Se(i.mode,1)},s=n.mode;function r(x,b,P,L){let z=b.valToPct(x);return L+P*(b.dir==-1?1-z:z)}function o(x,b,P,L){let z=b.valToPct(x);return L+P*(b.dir==-1?z:1-z)}function a(x,b,P,L){return b.ori==0?r(x,b,P,L):o(x,b,P,L)}n.valToPosH=r,n.valToPosV=o;let c=!1;n.status=0;let l=n.root=fi(e0);if(i.id!=null&&(l.id=i.id),ni(l,i.class),i.title){let x=fi(s0,l);x.textContent=i.title}let u=vi("canvas"),h=n.ctx=u.getContext("2d"),d=fi(r0,l);qs("click",d,x=>{x.target===g&&(ze!=pr||Ye!=mr)&&Cn.click(n,x)},!0);let f=n.under=fi(o0,d);d.appendChild(u);let g=n.over=fi(a0,d);i=Er(i);let v=+Se(i.pxAlign,1),p=wf(v);(i.plugins||[]).forEach(x=>{x.opts&&(i=x.opts(n,i)||i)});let m=i.ms||.001,y=n.series=s==1?Af(i.series||[],_f,Sf,!1):G_(i.series||[null],Mf),A=n.axes=Af(i.axes||[],gf,yf,!0),M=n.scales={},R=n.bands=i.bands||[];R.forEach(x=>{x.fill=xe(x.fill||null),x.dir=Se(x.dir,-1)});let E=s==2?y[1].facets[0].scale:y[0].scale,_={axes:Ki,series:pe},T=(i.drawOrder||["axes","series"]).map(x=>_[x]);function O(x){let b=x.distr==3?P=>Qi(P>0?P:x.clamp(n,P,x.min,x.max,x.key)):x.distr==4?P=>ph(P,x.asinh):x.distr==100?P=>x.fwd(P):P=>P;return P=>{let L=b(P),{_min:z,_max:J}=x,at=J-z;return(L-z)/at}}function N(x){let b=M[x];if(b==null){let P=(i.scales||bo)[x]||bo;if(P.from!=null){N(P.from);let L=cn({},M[P.from],P,{key:x});L.valToPct=O(L),M[x]=L}else{b=M[x]=cn({},x==E?np:P_,P),b.key=x;let L=b.time,z=b.range,J=Ss(z);if((x!=E||s==2&&!L)&&(J&&(z[0]==null||z[1]==null)&&(z={min:z[0]==null?ef:{mode:1,hard:z[0],soft:z[0]},max:z[1]==null?ef:{mode:1,hard:z[1],soft:z[1]}},J=!1),!J&&Fa(z))){let at=z;z=(_t,St,Dt)=>St==null?wr:Ia(St,Dt,at)}b.range=xe(z||(L?H_:x==E?b.distr==3?X_:b.distr==4?q_:dp:b.distr==3?fp:b.distr==4?pp:W_)),b.auto=xe(J?!1:b.auto),b.clamp=xe(b.clamp||C_),b._min=b._max=null,b.valToPct=O(b)}}}N("x"),N("y"),s==1&&y.forEach(x=>{N(x.scale)}),A.forEach(x=>{N(x.scale)});for(let x in i.scales)N(x);let I=M[E],V=I.distr,G,D;I.ori==0?(ni(l,n0),G=r,D=o):(ni(l,i0),G=o,D=r);let H={};for(let x in M){let b=M[x];(b.min!=null||b.max!=null)&&(H[x]={min:b.min,max:b.max},b.min=b.max=null)}let Y=i.tzDate||(x=>new Date(mn(x/m))),B=i.fmtDate||Uh,lt=m==1?n_(Y):r_(Y),Z=ff(Y,df(m==1?e_:s_,B)),K=mf(Y,pf(a_,B)),tt=[],ut=n.legend=cn({},h_,i.legend),ct=n.cursor=cn({},g_,{drag:{y:s==2}},i.cursor),j=ut.show,gt=ct.show,it=ut.markers;ut.idxs=tt,it.width=xe(it.width),it.dash=xe(it.dash),it.stroke=xe(it.stroke),it.fill=xe(it.fill);let pt,mt,Ft,Wt=[],Vt=[],le,ce=!1,Kt={};if(ut.live){let x=y[1]?y[1].values:null;ce=x!=null,le=ce?x(n,1,0):{_:0};for(let b in le)Kt[b]=Ch}if(j)if(pt=vi("table",f0,l),Ft=vi("tbody",null,pt),ut.mount(n,pt),ce){mt=vi("thead",null,pt,Ft);let x=vi("tr",null,mt);vi("th",null,x);for(var Ce in le)vi("th",Gd,x).textContent=Ce}else ni(pt,m0),ut.live&&ni(pt,p0);let Te={show:!0},qe={show:!1};function De(x,b){if(b==0&&(ce||!ut.live||s==2))return wr;let P=[],L=vi("tr",g0,Ft,Ft.childNodes[b]);ni(L,x.class),x.show||ni(L,Xs);let z=vi("th",null,L);if(it.show){let _t=fi(_0,z);if(b>0){let St=it.width(n,b);St&&(_t.style.border=St+"px "+it.dash(n,b)+" "+it.stroke(n,b)),_t.style.background=it.fill(n,b)}}let J=fi(Gd,z);x.label instanceof HTMLElement?J.appendChild(x.label):J.textContent=x.label,b>0&&(it.show||(J.style.color=x.width>0?it.stroke(n,b):it.fill(n,b)),ve("click",z,_t=>{if(ct._lock)return;Qt(_t);let St=y.indexOf(x);if((_t.ctrlKey||_t.metaKey)!=ut.isolate){let Dt=y.some((Ut,Bt)=>Bt>0&&Bt!=St&&Ut.show);y.forEach((Ut,Bt)=>{Bt>0&&Fi(Bt,Dt?Bt==St?Te:qe:Te,!0,ln.setSeries)})}else Fi(St,{show:!x.show},!0,ln.setSeries)},!1),te&&ve(qd,z,_t=>{ct._lock||(Qt(_t),Fi(y.indexOf(x),_r,!0,ln.setSeries))},!1));for(var at in le){let _t=vi("td",x0,L);_t.textContent="--",P.push(_t)}return[L,P]}let vn=new Map;function ve(x,b,P,L=!0){let z=vn.get(b)||{},J=ct.bind[x](n,b,P,L);J&&(qs(x,b,z[x]=J),vn.set(b,z))}function fn(x,b,P){let L=vn.get(b)||{};for(let z in L)(x==null||z==x)&&(Mh(z,b,L[z]),delete L[z]);x==null&&vn.delete(b)}let Je=0,sn=0,F=0,Ct=0,Jt=0,oe=0,wt=Jt,Ue=oe,Ht=F,Yt=Ct,C=0,S=0,X=0,dt=0;n.bbox={};let ot=!1,vt=!1,Mt=!1,et=!1,st=!1,xt=!1;function U(x,b,P){(P||x!=n.width||b!=n.height)&&rt(x,b),ue(!1),Mt=!0,vt=!0,Ln()}function rt(x,b){n.width=Je=F=x,n.height=sn=Ct=b,Jt=oe=0,bt(),Xt();let P=n.bbox;C=P.left=Hs(Jt*we,.5),S=P.top=Hs(oe*we,.5),X=P.width=Hs(F*we,.5),dt=P.height=Hs(Ct*we,.5)}let nt=3;function Et(){let x=!1,b=0;for(;!x;){b++;let P=ur(b),L=Ui(b);x=b==nt||P&&L,x||(rt(n.width,n.height),vt=!0)}}function yt({width:x,height:b}){U(x,b)}n.setSize=yt;function bt(){let x=!1,b=!1,P=!1,L=!1;A.forEach((z,J)=>{if(z.show&&z._show){let{side:at,_size:_t}=z,St=at%2,Dt=z.label!=null?z.labelSize:0,Ut=_t+Dt;Ut>0&&(St?(F-=Ut,at==3?(Jt+=Ut,L=!0):P=!0):(Ct-=Ut,at==0?(oe+=Ut,x=!0):b=!0))}}),Di[0]=x,Di[1]=P,Di[2]=b,Di[3]=L,F-=_i[1]+_i[3],Jt+=_i[3],Ct-=_i[2]+_i[0],oe+=_i[0]}function Xt(){let x=Jt+F,b=oe+Ct,P=Jt,L=oe;function z(J,at){switch(J){case 1:return x+=at,x-at;case 2:return b+=at,b-at;case 3:return P-=at,P+at;case 0:return L-=at,L+at}}A.forEach((J,at)=>{if(J.show&&J._show){let _t=J.side;J._pos=z(_t,J._size),J.label!=null&&(J._lpos=z(_t,J.labelSize))}})}if(ct.dataIdx==null){let x=ct.hover,b=x.skip=new Set(x.skip??[]);b.add(void 0);let P=x.prox=xe(x.prox),L=x.bias??=0;ct.dataIdx=(z,J,at,_t)=>{if(J==0)return at;let St=at,Dt=P(z,J,at,_t)??Fe,Ut=Dt>=0&&Dt<Fe,Bt=I.ori==0?F:Ct,re=ct.left,be=t[0],Me=t[J];if(b.has(Me[at])){St=null;let ge=null,jt=null,qt;if(L==0||L==-1)for(qt=at;ge==null&&qt-- >0;)b.has(Me[qt])||(ge=qt);if(L==0||L==1)for(qt=at;jt==null&&qt++<Me.length;)b.has(Me[qt])||(jt=qt);if(ge!=null||jt!=null)if(Ut){let Ge=ge==null?-1/0:G(be[ge],I,Bt,0),Qe=jt==null?1/0:G(be[jt],I,Bt,0),wn=re-Ge,Ne=Qe-re;wn<=Ne?wn<=Dt&&(St=ge):Ne<=Dt&&(St=jt)}else St=jt==null?ge:ge==null?jt:at-ge<=jt-at?ge:jt}else Ut&&gn(re-G(be[at],I,Bt,0))>Dt&&(St=null);return St}}let Qt=x=>{ct.event=x};ct.idxs=tt,ct._lock=!1;let ht=ct.points;ht.show=xe(ht.show),ht.size=xe(ht.size),ht.stroke=xe(ht.stroke),ht.width=xe(ht.width),ht.fill=xe(ht.fill);let kt=n.focus=cn({},i.focus||{alpha:.3},ct.focus),te=kt.prox>=0,Rt=te&&ht.one,he=[],ke=[],kn=[];function lo(x,b){let P=ht.show(n,b);if(P instanceof HTMLElement)return ni(P,d0),ni(P,x.class),zi(P,-10,-10,F,Ct),g.insertBefore(P,he[b]),P}function lr(x,b){if(s==1||b>0){let P=s==1&&M[x.scale].time,L=x.value;x.value=P?lf(L)?mf(Y,pf(L,B)):L||K:L||T_,x.label=x.label||(P?x_:__)}if(Rt||b>0){x.width=x.width==null?1:x.width,x.paths=x.paths||z_||P0,x.fillTo=xe(x.fillTo||I_),x.pxAlign=+Se(x.pxAlign,v),x.pxRound=wf(x.pxAlign),x.stroke=xe(x.stroke||null),x.fill=xe(x.fill||null),x._stroke=x._fill=x._paths=x._focus=null;let P=A_(Wn(1,x.width),1),L=x.points=cn({},{size:P,width:Wn(1,P*.2),stroke:x.stroke,space:P*2,paths:V_,_stroke:null,_fill:null},x.points);L.show=xe(L.show),L.filter=xe(L.filter),L.fill=xe(L.fill),L.stroke=xe(L.stroke),L.paths=xe(L.paths),L.pxAlign=x.pxAlign}if(j){let P=De(x,b);Wt.splice(b,0,P[0]),Vt.splice(b,0,P[1]),ut.values.push(null)}if(gt){tt.splice(b,0,null);let P=null;Rt?b==0&&(P=lo(x,b)):b>0&&(P=lo(x,b)),he.splice(b,0,P),ke.splice(b,0,0),kn.splice(b,0,0)}bn("addSeries",b)}function th(x,b){b=b??y.length,x=s==1?Ah(x,b,_f,Sf):Ah(x,b,{},Mf),y.splice(b,0,x),lr(y[b],b)}n.addSeries=th;function ya(x){if(y.splice(x,1),j){ut.values.splice(x,1),Vt.splice(x,1);let b=Wt.splice(x,1)[0];fn(null,b.firstChild),b.remove()}gt&&(tt.splice(x,1),he.splice(x,1)[0].remove(),ke.splice(x,1),kn.splice(x,1)),bn("delSeries",x)}n.delSeries=ya;let Di=[!1,!1,!1,!1];function $i(x,b){if(x._show=x.show,x.show){let P=x.side%2,L=M[x.scale];L==null&&(x.scale=P?y[1].scale:E,L=M[x.scale]);let z=L.time;x.size=xe(x.size),x.space=xe(x.space),x.rotate=xe(x.rotate),Ss(x.incrs)&&x.incrs.forEach(at=>{!bs.has(at)&&bs.set(at,Of(at))}),x.incrs=xe(x.incrs||(L.distr==2?j0:z?m==1?t_:i_:Ws)),x.splits=xe(x.splits||(z&&L.distr==1?lt:L.distr==3?bh:L.distr==4?M_:v_)),x.stroke=xe(x.stroke),x.grid.stroke=xe(x.grid.stroke),x.ticks.stroke=xe(x.ticks.stroke),x.border.stroke=xe(x.border.stroke);let J=x.values;x.values=Ss(J)&&!Ss(J[0])?xe(J):z?Ss(J)?ff(Y,df(J,B)):lf(J)?o_(Y,J):J||Z:J||y_,x.filter=xe(x.filter||(L.distr>=3&&L.log==10?w_:L.distr==3&&L.log==2?E_:Uf)),x.font=Rf(x.font),x.labelFont=Rf(x.labelFont),x._size=x.size(n,null,b,0),x._space=x._rotate=x._incrs=x._found=x._splits=x._values=null,x._size>0&&(Di[b]=!0,x._el=fi(l0,d))}}function Zi(x,b,P,L){let[z,J,at,_t]=P,St=b%2,Dt=0;return St==0&&(_t||J)&&(Dt=b==0&&!z||b==2&&!at?mn(gf.size/3):0),St==1&&(z||at)&&(Dt=b==1&&!J||b==3&&!_t?mn(yf.size/2):0),Dt}let co=n.padding=(i.padding||[Zi,Zi,Zi,Zi]).map(x=>xe(Se(x,Zi))),_i=n._padding=co.map((x,b)=>x(n,b,Di,0)),Ke,en=null,nn=null,Ni=s==1?y[0].idxs:null,jn=null,ms=!1;function ho(x,b){if(t=x??[],n.data=n._data=t,s==2){Ke=0;for(let P=1;P<y.length;P++)Ke+=t[P][0].length}else{t.length==0&&(n.data=n._data=t=[[]]),jn=t[0],Ke=jn.length;let P=t;if(V==2){P=t.slice();let L=P[0]=Array(Ke);for(let z=0;z<Ke;z++)L[z]=z}n._data=t=P}if(ue(!0),bn("setData"),V==2&&(Mt=!0),b!==!1){let P=I;P.auto(n,ms)?uo():xs(E,P.min,P.max),et=et||ct.left>=0,xt=!0,Ln()}}n.setData=ho;function uo(){ms=!0;let x,b;s==1&&(Ke>0?(en=Ni[0]=0,nn=Ni[1]=Ke-1,x=t[0][en],b=t[0][nn],V==2?(x=en,b=nn):x==b&&(V==3?[x,b]=Na(x,x,I.log,!1):V==4?[x,b]=Ih(x,x,I.log,!1):I.time?b=x+mn(86400/m):[x,b]=Ia(x,b,Lh,!0))):(en=Ni[0]=x=null,nn=Ni[1]=b=null)),xs(E,x,b)}let cr,gs,hr,w,k,Q,q,$,Tt,Pt;function At(x,b,P,L,z,J){x??=Wd,P??=Nh,L??="butt",z??=Wd,J??="round",x!=cr&&(h.strokeStyle=cr=x),z!=gs&&(h.fillStyle=gs=z),b!=hr&&(h.lineWidth=hr=b),J!=k&&(h.lineJoin=k=J),L!=Q&&(h.lineCap=Q=L),P!=w&&h.setLineDash(w=P)}function It(x,b,P,L){b!=gs&&(h.fillStyle=gs=b),x!=q&&(h.font=q=x),P!=$&&(h.textAlign=$=P),L!=Tt&&(h.textBaseline=Tt=L)}function Gt(x,b,P,L,z=0){if(L.length>0&&x.auto(n,ms)&&(b==null||b.min==null)){let J=Se(en,0),at=Se(nn,L.length-1),_t=P.min==null?w0(L,J,at,z,x.distr==3):[P.min,P.max];x.min=Si(x.min,P.min=_t[0]),x.max=Wn(x.max,P.max=_t[1])}}let ee={min:null,max:null};function fe(){for(let L in M){let z=M[L];H[L]==null&&(z.min==null||H[E]!=null&&z.auto(n,ms))&&(H[L]=ee)}for(let L in M){let z=M[L];H[L]==null&&z.from!=null&&H[z.from]!=null&&(H[L]=ee)}H[E]!=null&&ue(!0);let x={};for(let L in H){let z=H[L];if(z!=null){let J=x[L]=Er(M[L],D0);if(z.min!=null)cn(J,z);else if(L!=E||s==2)if(Ke==0&&J.from==null){let at=J.range(n,null,null,L);J.min=at[0],J.max=at[1]}else J.min=Fe,J.max=-Fe}}if(Ke>0){y.forEach((L,z)=>{if(s==1){let J=L.scale,at=H[J];if(at==null)return;let _t=x[J];if(z==0){let St=_t.range(n,_t.min,_t.max,J);_t.min=St[0],_t.max=St[1],en=Mi(_t.min,t[0]),nn=Mi(_t.max,t[0]),nn-en>1&&(t[0][en]<_t.min&&en++,t[0][nn]>_t.max&&nn--),L.min=jn[en],L.max=jn[nn]}else L.show&&L.auto&&Gt(_t,at,L,t[z],L.sorted);L.idxs[0]=en,L.idxs[1]=nn}else if(z>0&&L.show&&L.auto){let[J,at]=L.facets,_t=J.scale,St=at.scale,[Dt,Ut]=t[z],Bt=x[_t],re=x[St];Bt!=null&&Gt(Bt,H[_t],J,Dt,J.sorted),re!=null&&Gt(re,H[St],at,Ut,at.sorted),L.min=at.min,L.max=at.max}});for(let L in x){let z=x[L],J=H[L];if(z.from==null&&(J==null||J.min==null)){let at=z.range(n,z.min==Fe?null:z.min,z.max==-Fe?null:z.max,L);z.min=at[0],z.max=at[1]}}}for(let L in x){let z=x[L];if(z.from!=null){let J=x[z.from];if(J.min==null)z.min=z.max=null;else{let at=z.range(n,J.min,J.max,L);z.min=at[0],z.max=at[1]}}}let b={},P=!1;for(let L in x){let z=x[L],J=M[L];if(J.min!=z.min||J.max!=z.max){J.min=z.min,J.max=z.max;let at=J.distr;J._min=at==3?Qi(J.min):at==4?ph(J.min,J.asinh):at==100?J.fwd(J.min):J.min,J._max=at==3?Qi(J.max):at==4?ph(J.max,J.asinh):at==100?J.fwd(J.max):J.max,b[L]=P=!0}}if(P){y.forEach((L,z)=>{s==2?z>0&&b.y&&(L._paths=null):b[L.scale]&&(L._paths=null)});for(let L in b)Mt=!0,bn("setScale",L);gt&&ct.left>=0&&(et=xt=!0)}for(let L in H)H[L]=null}function zt(x){let b=Sh(en-1,0,Ke-1),P=Sh(nn+1,0,Ke-1);for(;x[b]==null&&b>0;)b--;for(;x[P]==null&&P<Ke-1;)P++;return[b,P]}function pe(){if(Ke>0){let x=y.some(b=>b._focus)&&Pt!=kt.alpha;x&&(h.globalAlpha=Pt=kt.alpha),y.forEach((b,P)=>{if(P>0&&b.show&&(Ze(P,!1),Ze(P,!0),b._paths==null)){let L=Pt;Pt!=b.alpha&&(h.globalAlpha=Pt=b.alpha);let z=s==2?[0,t[P][0].length-1]:zt(t[P]);b._paths=b.paths(n,P,z[0],z[1]),Pt!=L&&(h.globalAlpha=Pt=L)}}),y.forEach((b,P)=>{if(P>0&&b.show){let L=Pt;Pt!=b.alpha&&(h.globalAlpha=Pt=b.alpha),b._paths!=null&&Pe(P,!1);{let z=b._paths!=null?b._paths.gaps:null,J=b.points.show(n,P,en,nn,z),at=b.points.filter(n,P,J,z);(J||at)&&(b.points._paths=b.points.paths(n,P,en,nn,at),Pe(P,!0))}Pt!=L&&(h.globalAlpha=Pt=L),bn("drawSeries",P)}}),x&&(h.globalAlpha=Pt=1)}}function Ze(x,b){let P=b?y[x].points:y[x];P._stroke=P.stroke(n,x),P._fill=P.fill(n,x)}function Pe(x,b){let P=b?y[x].points:y[x],{stroke:L,fill:z,clip:J,flags:at,_stroke:_t=P._stroke,_fill:St=P._fill,_width:Dt=P.width}=P._paths;Dt=Oe(Dt*we,3);let Ut=null,Bt=Dt%2/2;b&&St==null&&(St=Dt>0?"#fff":_t);let re=P.pxAlign==1&&Bt>0;if(re&&h.translate(Bt,Bt),!b){let be=C-Dt/2,Me=S-Dt/2,ge=X+Dt,jt=dt+Dt;Ut=new Path2D,Ut.rect(be,Me,ge,jt)}b?Ot(_t,Dt,P.dash,P.cap,St,L,z,at,J):Ie(x,_t,Dt,P.dash,P.cap,St,L,z,at,Ut,J),re&&h.translate(-Bt,-Bt)}function Ie(x,b,P,L,z,J,at,_t,St,Dt,Ut){let Bt=!1;St!=0&&R.forEach((re,be)=>{if(re.series[0]==x){let Me=y[re.series[1]],ge=t[re.series[1]],jt=(Me._paths||bo).band;Ss(jt)&&(jt=re.dir==1?jt[0]:jt[1]);let qt,Ge=null;Me.show&&jt&&T0(ge,en,nn)?(Ge=re.fill(n,be)||J,qt=Me._paths.clip):jt=null,Ot(b,P,L,z,Ge,at,_t,St,Dt,Ut,qt,jt),Bt=!0}}),Bt||Ot(b,P,L,z,J,at,_t,St,Dt,Ut)}let pn=Tr|Eh;function Ot(x,b,P,L,z,J,at,_t,St,Dt,Ut,Bt){At(x,b,P,L,z),(St||Dt||Bt)&&(h.save(),St&&h.clip(St),Dt&&h.clip(Dt)),Bt?(_t&pn)==pn?(h.clip(Bt),Ut&&h.clip(Ut),_e(z,at),rn(x,J,b)):_t&Eh?(_e(z,at),h.clip(Bt),rn(x,J,b)):_t&Tr&&(h.save(),h.clip(Bt),Ut&&h.clip(Ut),_e(z,at),h.restore(),rn(x,J,b)):(_e(z,at),rn(x,J,b)),(St||Dt||Bt)&&h.restore()}function rn(x,b,P){P>0&&(b instanceof Map?b.forEach((L,z)=>{h.strokeStyle=cr=z,h.stroke(L)}):b!=null&&x&&h.stroke(b))}function _e(x,b){b instanceof Map?b.forEach((P,L)=>{h.fillStyle=gs=L,h.fill(P)}):b!=null&&x&&h.fill(b)}function Ji(x,b,P,L){let z=A[x],J;if(L<=0)J=[0,0];else{let at=z._space=z.space(n,x,b,P,L),_t=z._incrs=z.incrs(n,x,b,P,L,at);J=Y_(b,P,_t,L,at)}return z._found=J}function on(x,b,P,L,z,J,at,_t,St,Dt){let Ut=at%2/2;v==1&&h.translate(Ut,Ut),At(_t,at,St,Dt,_t),h.beginPath();let Bt,re,be,Me,ge=z+(L==0||L==3?-J:J);P==0?(re=z,Me=ge):(Bt=z,be=ge);for(let jt=0;jt<x.length;jt++)b[jt]!=null&&(P==0?Bt=be=x[jt]:re=Me=x[jt],h.moveTo(Bt,re),h.lineTo(be,Me));h.stroke(),v==1&&h.translate(-Ut,-Ut)}function ur(x){let b=!0;return A.forEach((P,L)=>{if(!P.show)return;let z=M[P.scale];if(z.min==null){P._show&&(b=!1,P._show=!1,ue(!1));return}else P._show||(b=!1,P._show=!0,ue(!1));let J=P.side,at=J%2,{min:_t,max:St}=z,[Dt,Ut]=Ji(L,_t,St,at==0?F:Ct);if(Ut==0)return;let Bt=z.distr==2,re=P._splits=P.splits(n,L,_t,St,Dt,Ut,Bt),be=z.distr==2?re.map(qt=>jn[qt]):re,Me=z.distr==2?jn[re[1]]-jn[re[0]]:Dt,ge=P._values=P.values(n,P.filter(n,be,L,Ut,Me),L,Ut,Me);P._rotate=J==2?P.rotate(n,ge,L,Ut):0;let jt=P._size;P._size=pi(P.size(n,ge,L,x)),jt!=null&&P._size!=jt&&(b=!1)}),b}function Ui(x){let b=!0;return co.forEach((P,L)=>{let z=P(n,L,Di,x);z!=_i[L]&&(b=!1),_i[L]=z}),b}function Ki(){for(let x=0;x<A.length;x++){let b=A[x];if(!b.show||!b._show)continue;let P=b.side,L=P%2,z,J,at=b.stroke(n,x),_t=P==0||P==3?-1:1,[St,Dt]=b._found;if(b.label!=null){let Gn=b.labelGap*_t,ei=mn((b._lpos+Gn)*we);It(b.labelFont[0],at,"center",P==2?"top":Hd),h.save(),L==1?(z=J=0,h.translate(ei,mn(S+dt/2)),h.rotate((P==3?-Ca:Ca)/2)):(z=mn(C+X/2),J=ei);let Gs=Df(b.label)?b.label(n,x,St,Dt):b.label;h.fillText(Gs,z,J),h.restore()}if(Dt==0)continue;let Ut=M[b.scale],Bt=L==0?X:dt,re=L==0?C:S,be=b._splits,Me=Ut.distr==2?be.map(Gn=>jn[Gn]):be,ge=Ut.distr==2?jn[be[1]]-jn[be[0]]:St,jt=b.ticks,qt=b.border,Ge=jt.show?jt.size:0,Qe=mn(Ge*we),wn=mn((b.alignTo==2?b._size-Ge-b.gap:b.gap)*we),Ne=b._rotate*-Ca/180,tn=p(b._pos*we),Qn=(Qe+wn)*_t,Vn=tn+Qn;J=L==0?Vn:0,z=L==1?Vn:0;let ui=b.font[0],xi=b.align==1?vr:b.align==2?uh:Ne>0?vr:Ne<0?uh:L==0?"center":P==3?uh:vr,Bi=Ne||L==1?"middle":P==2?"top":Hd;It(ui,at,xi,Bi);let ti=b.font[1]*b.lineGap,di=be.map(Gn=>p(a(Gn,Ut,Bt,re))),yi=b._values;for(let Gn=0;Gn<yi.length;Gn++){let ei=yi[Gn];if(ei!=null){L==0?z=di[Gn]:J=di[Gn],ei=""+ei;let Gs=ei.indexOf(`
`)==-1?[ei]:ei.split(/\n/gm);for(let Hn=0;Hn<Gs.length;Hn++){let kd=Gs[Hn];Ne?(h.save(),h.translate(z,J+Hn*ti),h.rotate(Ne),h.fillText(kd,0,0),h.restore()):h.fillText(kd,z,J+Hn*ti)}}}jt.show&&on(di,jt.filter(n,Me,x,Dt,ge),L,P,tn,Qe,Oe(jt.width*we,3),jt.stroke(n,x),jt.dash,jt.cap);let ki=b.grid;ki.show&&on(di,ki.filter(n,Me,x,Dt,ge),L,L==0?2:1,L==0?S:C,L==0?dt:X,Oe(ki.width*we,3),ki.stroke(n,x),ki.dash,ki.cap),qt.show&&on([tn],[1],L==0?1:0,L==0?1:2,L==1?S:C,L==1?dt:X,Oe(qt.width*we,3),qt.stroke(n,x),qt.dash,qt.cap)}bn("drawAxes")}function ue(x){y.forEach((b,P)=>{P>0&&(b._paths=null,x&&(s==1?(b.min=null,b.max=null):b.facets.forEach(L=>{L.min=null,L.max=null})))})}let je=!1,zn=!1,Le=[];function an(){zn=!1;for(let x=0;x<Le.length;x++)bn(...Le[x]);Le.length=0}function Ln(){je||(z0(Md),je=!0)}function va(x,b=!1){je=!0,zn=b,x(n),Md(),b&&Le.length>0&&queueMicrotask(an)}n.batch=va;function Md(){if(ot&&(fe(),ot=!1),Mt&&(Et(),Mt=!1),vt){if(He(f,vr,Jt),He(f,"top",oe),He(f,yo,F),He(f,vo,Ct),He(g,vr,Jt),He(g,"top",oe),He(g,yo,F),He(g,vo,Ct),He(d,yo,Je),He(d,vo,sn),u.width=mn(Je*we),u.height=mn(sn*we),A.forEach(({_el:x,_show:b,_size:P,_pos:L,side:z})=>{if(x!=null)if(b){let J=z===3||z===0?P:0,at=z%2==1;He(x,at?"left":"top",L-J),He(x,at?"width":"height",P),He(x,at?"top":"left",at?oe:Jt),He(x,at?"height":"width",at?Ct:F),vh(x,Xs)}else ni(x,Xs)}),cr=gs=hr=k=Q=q=$=Tt=w=null,Pt=1,mo(!0),Jt!=wt||oe!=Ue||F!=Ht||Ct!=Yt){ue(!1);let x=F/Ht,b=Ct/Yt;if(gt&&!et&&ct.left>=0){ct.left*=x,ct.top*=b,dr&&zi(dr,mn(ct.left),0,F,Ct),fr&&zi(fr,0,mn(ct.top),F,Ct);for(let P=0;P<he.length;P++){let L=he[P];L!=null&&(ke[P]*=x,kn[P]*=b,zi(L,pi(ke[P]),pi(kn[P]),F,Ct))}}if(Ve.show&&!st&&Ve.left>=0&&Ve.width>0){Ve.left*=x,Ve.width*=x,Ve.top*=b,Ve.height*=b;for(let P in oh)He(gr,P,Ve[P])}wt=Jt,Ue=oe,Ht=F,Yt=Ct}bn("setSize"),vt=!1}Je>0&&sn>0&&(h.clearRect(0,0,u.width,u.height),bn("drawClear"),T.forEach(x=>x()),bn("draw")),Ve.show&&st&&(Ma(Ve),st=!1),gt&&et&&(Vs(null,!0,!1),et=!1),ut.show&&ut.live&&xt&&(sh(),xt=!1),c||(c=!0,n.status=1,bn("ready")),ms=!1,je=!1}n.redraw=(x,b)=>{Mt=b||!1,x!==!1?xs(E,I.min,I.max):Ln()};function eh(x,b){let P=M[x];if(P.from==null){if(Ke==0){let L=P.range(n,b.min,b.max,x);b.min=L[0],b.max=L[1]}if(b.min>b.max){let L=b.min;b.min=b.max,b.max=L}if(Ke>1&&b.min!=null&&b.max!=null&&b.max-b.min<1e-16)return;x==E&&P.distr==2&&Ke>0&&(b.min=Mi(b.min,t[0]),b.max=Mi(b.max,t[0]),b.min==b.max&&b.max++),H[x]=b,ot=!0,Ln()}}n.setScale=eh;let nh,ih,dr,fr,Sd,bd,pr,mr,wd,Ed,ze,Ye,_s=!1,Cn=ct.drag,Mn=Cn.x,Sn=Cn.y;gt&&(ct.x&&(nh=fi(h0,g)),ct.y&&(ih=fi(u0,g)),I.ori==0?(dr=nh,fr=ih):(dr=ih,fr=nh),ze=ct.left,Ye=ct.top);let Ve=n.select=cn({show:!0,over:!0,left:0,width:0,top:0,height:0},i.select),gr=Ve.show?fi(c0,Ve.over?g:f):null;function Ma(x,b){if(Ve.show){for(let P in x)Ve[P]=x[P],P in oh&&He(gr,P,x[P]);b!==!1&&bn("setSelect")}}n.setSelect=Ma;function Gg(x){if(y[x].show)j&&vh(Wt[x],Xs);else if(j&&ni(Wt[x],Xs),gt){let P=Rt?he[0]:he[x];P!=null&&zi(P,-10,-10,F,Ct)}}function xs(x,b,P){eh(x,{min:b,max:P})}function Fi(x,b,P,L){b.focus!=null&&Yg(x),b.show!=null&&y.forEach((z,J)=>{J>0&&(x==J||x==null)&&(z.show=b.show,Gg(J),s==2?(xs(z.facets[0].scale,null,null),xs(z.facets[1].scale,null,null)):xs(z.scale,null,null),Ln())}),P!==!1&&bn("setSeries",x,b),L&&go("setSeries",n,x,b)}n.setSeries=Fi;function Hg(x,b){cn(R[x],b)}function Wg(x,b){x.fill=xe(x.fill||null),x.dir=Se(x.dir,-1),b=b??R.length,R.splice(b,0,x)}function Xg(x){x==null?R.length=0:R.splice(x,1)}n.addBand=Wg,n.setBand=Hg,n.delBand=Xg;function qg(x,b){y[x].alpha=b,gt&&he[x]!=null&&(he[x].style.opacity=b),j&&Wt[x]&&(Wt[x].style.opacity=b)}let ji,ys,zs,_r={focus:!0};function Yg(x){if(x!=zs){let b=x==null,P=kt.alpha!=1;y.forEach((L,z)=>{if(s==1||z>0){let J=b||z==0||z==x;L._focus=b?null:J,P&&qg(z,J?1:kt.alpha)}}),zs=x,P&&Ln()}}j&&te&&ve(Yd,pt,x=>{ct._lock||(Qt(x),zs!=null&&Fi(null,_r,!0,ln.setSeries))});function Oi(x,b,P){let L=M[b];P&&(x=x/we-(L.ori==1?oe:Jt));let z=F;L.ori==1&&(z=Ct,x=z-x),L.dir==-1&&(x=z-x);let J=L._min,at=L._max,_t=x/z,St=J+(at-J)*_t,Dt=L.distr;return Dt==3?br(10,St):Dt==4?R0(St,L.asinh):Dt==100?L.bwd(St):St}function $g(x,b){let P=Oi(x,E,b);return Mi(P,t[0],en,nn)}n.valToIdx=x=>Mi(x,t[0]),n.posToIdx=$g,n.posToVal=Oi,n.valToPos=(x,b,P)=>M[b].ori==0?r(x,M[b],P?X:F,P?C:0):o(x,M[b],P?dt:Ct,P?S:0),n.setCursor=(x,b,P)=>{ze=x.left,Ye=x.top,Vs(null,b,P)};function Td(x,b){He(gr,vr,Ve.left=x),He(gr,yo,Ve.width=b)}function Ad(x,b){He(gr,"top",Ve.top=x),He(gr,vo,Ve.height=b)}let fo=I.ori==0?Td:Ad,po=I.ori==1?Td:Ad;function Zg(){if(j&&ut.live)for(let x=s==2?1:0;x<y.length;x++){if(x==0&&ce)continue;let b=ut.values[x],P=0;for(let L in b)Vt[x][P++].firstChild.nodeValue=b[L]}}function sh(x,b){if(x!=null&&(x.idxs?x.idxs.forEach((P,L)=>{tt[L]=P}):L0(x.idx)||tt.fill(x.idx),ut.idx=tt[0]),j&&ut.live){for(let P=0;P<y.length;P++)(P>0||s==1&&!ce)&&Jg(P,tt[P]);Zg()}xt=!1,b!==!1&&bn("setLegend")}n.setLegend=sh;function Jg(x,b){let P=y[x],L=x==0&&V==2?jn:t[x],z;ce?z=P.values(n,x,b)??Kt:(z=P.value(n,b==null?null:L[b],x,b),z=z==null?Kt:{_:z}),ut.values[x]=z}function Vs(x,b,P){wd=ze,Ed=Ye,[ze,Ye]=ct.move(n,ze,Ye),ct.left=ze,ct.top=Ye,gt&&(dr&&zi(dr,mn(ze),0,F,Ct),fr&&zi(fr,0,mn(Ye),F,Ct));let L,z=en>nn;ji=Fe,ys=null;let J=I.ori==0?F:Ct,at=I.ori==1?F:Ct;if(ze<0||Ke==0||z){L=ct.idx=null;for(let _t=0;_t<y.length;_t++){let St=he[_t];St!=null&&zi(St,-10,-10,F,Ct)}te&&Fi(null,_r,!0,x==null&&ln.setSeries),ut.live&&(tt.fill(L),xt=!0)}else{let _t,St,Dt;s==1&&(_t=I.ori==0?ze:Ye,St=Oi(_t,E),L=ct.idx=Mi(St,t[0],en,nn),Dt=G(t[0][L],I,J,0));let Ut=-10,Bt=-10,re=0,be=0,Me=!0,ge="",jt="";for(let qt=s==2?1:0;qt<y.length;qt++){let Ge=y[qt],Qe=tt[qt],wn=Qe==null?null:s==1?t[qt][Qe]:t[qt][1][Qe],Ne=ct.dataIdx(n,qt,L,St),tn=Ne==null?null:s==1?t[qt][Ne]:t[qt][1][Ne];if(xt=xt||tn!=wn||Ne!=Qe,tt[qt]=Ne,qt>0&&Ge.show){let Qn=Ne==null?-10:Ne==L?Dt:G(s==1?t[0][Ne]:t[qt][0][Ne],I,J,0),Vn=tn==null?-10:D(tn,s==1?M[Ge.scale]:M[Ge.facets[1].scale],at,0);if(te&&tn!=null){let ui=I.ori==1?ze:Ye,xi=gn(kt.dist(n,qt,Ne,Vn,ui));if(xi<ji){let Bi=kt.bias;if(Bi!=0){let ti=Oi(ui,Ge.scale),di=tn>=0?1:-1,yi=ti>=0?1:-1;yi==di&&(yi==1?Bi==1?tn>=ti:tn<=ti:Bi==1?tn<=ti:tn>=ti)&&(ji=xi,ys=qt)}else ji=xi,ys=qt}}if(xt||Rt){let ui,xi;I.ori==0?(ui=Qn,xi=Vn):(ui=Vn,xi=Qn);let Bi,ti,di,yi,ki,Gn,ei=!0,Gs=ht.bbox;if(Gs!=null){ei=!1;let Hn=Gs(n,qt);di=Hn.left,yi=Hn.top,Bi=Hn.width,ti=Hn.height}else di=ui,yi=xi,Bi=ti=ht.size(n,qt);if(Gn=ht.fill(n,qt),ki=ht.stroke(n,qt),Rt)qt==ys&&ji<=kt.prox&&(Ut=di,Bt=yi,re=Bi,be=ti,Me=ei,ge=Gn,jt=ki);else{let Hn=he[qt];Hn!=null&&(ke[qt]=di,kn[qt]=yi,tf(Hn,Bi,ti,ei),jd(Hn,Gn,ki),zi(Hn,pi(di),pi(yi),F,Ct))}}}}if(Rt){let qt=kt.prox,Ge=zs==null?ji<=qt:ji>qt||ys!=zs;if(xt||Ge){let Qe=he[0];Qe!=null&&(ke[0]=Ut,kn[0]=Bt,tf(Qe,re,be,Me),jd(Qe,ge,jt),zi(Qe,pi(Ut),pi(Bt),F,Ct))}}}if(Ve.show&&_s)if(x!=null){let[_t,St]=ln.scales,[Dt,Ut]=ln.match,[Bt,re]=x.cursor.sync.scales,be=x.cursor.drag;if(Mn=be._x,Sn=be._y,Mn||Sn){let{left:Me,top:ge,width:jt,height:qt}=x.select,Ge=x.scales[Bt].ori,Qe=x.posToVal,wn,Ne,tn,Qn,Vn,ui=_t!=null&&Dt(_t,Bt),xi=St!=null&&Ut(St,re);ui&&Mn?(Ge==0?(wn=Me,Ne=jt):(wn=ge,Ne=qt),tn=M[_t],Qn=G(Qe(wn,Bt),tn,J,0),Vn=G(Qe(wn+Ne,Bt),tn,J,0),fo(Si(Qn,Vn),gn(Vn-Qn))):fo(0,J),xi&&Sn?(Ge==1?(wn=Me,Ne=jt):(wn=ge,Ne=qt),tn=M[St],Qn=D(Qe(wn,re),tn,at,0),Vn=D(Qe(wn+Ne,re),tn,at,0),po(Si(Qn,Vn),gn(Vn-Qn))):po(0,at)}else ah()}else{let _t=gn(wd-Sd),St=gn(Ed-bd);if(I.ori==1){let re=_t;_t=St,St=re}Mn=Cn.x&&_t>=Cn.dist,Sn=Cn.y&&St>=Cn.dist;let Dt=Cn.uni;Dt!=null?Mn&&Sn&&(Mn=_t>=Dt,Sn=St>=Dt,!Mn&&!Sn&&(St>_t?Sn=!0:Mn=!0)):Cn.x&&Cn.y&&(Mn||Sn)&&(Mn=Sn=!0);let Ut,Bt;Mn&&(I.ori==0?(Ut=pr,Bt=ze):(Ut=mr,Bt=Ye),fo(Si(Ut,Bt),gn(Bt-Ut)),Sn||po(0,at)),Sn&&(I.ori==1?(Ut=pr,Bt=ze):(Ut=mr,Bt=Ye),po(Si(Ut,Bt),gn(Bt-Ut)),Mn||fo(0,J)),!Mn&&!Sn&&(fo(0,0),po(0,0))}if(Cn._x=Mn,Cn._y=Sn,x==null){if(P){if(Bd!=null){let[_t,St]=ln.scales;ln.values[0]=_t!=null?Oi(I.ori==0?ze:Ye,_t):null,ln.values[1]=St!=null?Oi(I.ori==1?ze:Ye,St):null}go(dh,n,ze,Ye,F,Ct,L)}if(te){let _t=P&&ln.setSeries,St=kt.prox;zs==null?ji<=St&&Fi(ys,_r,!0,_t):ji>St?Fi(null,_r,!0,_t):ys!=zs&&Fi(ys,_r,!0,_t)}}xt&&(ut.idx=L,sh()),b!==!1&&bn("setCursor")}let vs=null;Object.defineProperty(n,"rect",{get(){return vs==null&&mo(!1),vs}});function mo(x=!1){x?vs=null:(vs=g.getBoundingClientRect(),bn("syncRect",vs))}function Rd(x,b,P,L,z,J,at){ct._lock||_s&&x!=null&&x.movementX==0&&x.movementY==0||(rh(x,b,P,L,z,J,at,!1,x!=null),x!=null?Vs(null,!0,!0):Vs(b,!0,!1))}function rh(x,b,P,L,z,J,at,_t,St){if(vs==null&&mo(!1),Qt(x),x!=null)P=x.clientX-vs.left,L=x.clientY-vs.top;else{if(P<0||L<0){ze=-10,Ye=-10;return}let[Dt,Ut]=ln.scales,Bt=b.cursor.sync,[re,be]=Bt.values,[Me,ge]=Bt.scales,[jt,qt]=ln.match,Ge=b.axes[0].side%2==1,Qe=I.ori==0?F:Ct,wn=I.ori==1?F:Ct,Ne=Ge?J:z,tn=Ge?z:J,Qn=Ge?L:P,Vn=Ge?P:L;if(Me!=null?P=jt(Dt,Me)?a(re,M[Dt],Qe,0):-10:P=Qe*(Qn/Ne),ge!=null?L=qt(Ut,ge)?a(be,M[Ut],wn,0):-10:L=wn*(Vn/tn),I.ori==1){let ui=P;P=L,L=ui}}St&&(b==null||b.cursor.event.type==dh)&&((P<=1||P>=F-1)&&(P=Hs(P,F)),(L<=1||L>=Ct-1)&&(L=Hs(L,Ct))),_t?(Sd=P,bd=L,[pr,mr]=ct.move(n,P,L)):(ze=P,Ye=L)}let oh={width:0,height:0,left:0,top:0};function ah(){Ma(oh,!1)}let Cd,Pd,Id,Ld;function Dd(x,b,P,L,z,J,at){_s=!0,Mn=Sn=Cn._x=Cn._y=!1,rh(x,b,P,L,z,J,at,!0,!1),x!=null&&(ve(fh,xh,Nd,!1),go(Xd,n,pr,mr,F,Ct,null));let{left:_t,top:St,width:Dt,height:Ut}=Ve;Cd=_t,Pd=St,Id=Dt,Ld=Ut}function Nd(x,b,P,L,z,J,at){_s=Cn._x=Cn._y=!1,rh(x,b,P,L,z,J,at,!1,!0);let{left:_t,top:St,width:Dt,height:Ut}=Ve,Bt=Dt>0||Ut>0,re=Cd!=_t||Pd!=St||Id!=Dt||Ld!=Ut;if(Bt&&re&&Ma(Ve),Cn.setScale&&Bt&&re){let be=_t,Me=Dt,ge=St,jt=Ut;if(I.ori==1&&(be=St,Me=Ut,ge=_t,jt=Dt),Mn&&xs(E,Oi(be,E),Oi(be+Me,E)),Sn)for(let qt in M){let Ge=M[qt];qt!=E&&Ge.from==null&&Ge.min!=Fe&&xs(qt,Oi(ge+jt,qt),Oi(ge,qt))}ah()}else ct.lock&&(ct._lock=!ct._lock,Vs(b,!0,x!=null));x!=null&&(fn(fh,xh),go(fh,n,ze,Ye,F,Ct,null))}function Kg(x,b,P,L,z,J,at){if(ct._lock)return;Qt(x);let _t=_s;if(_s){let St=!0,Dt=!0,Ut=10,Bt,re;I.ori==0?(Bt=Mn,re=Sn):(Bt=Sn,re=Mn),Bt&&re&&(St=ze<=Ut||ze>=F-Ut,Dt=Ye<=Ut||Ye>=Ct-Ut),Bt&&St&&(ze=ze<pr?0:F),re&&Dt&&(Ye=Ye<mr?0:Ct),Vs(null,!0,!0),_s=!1}ze=-10,Ye=-10,tt.fill(null),Vs(null,!0,!0),_t&&(_s=_t)}function Ud(x,b,P,L,z,J,at){ct._lock||(Qt(x),uo(),ah(),x!=null&&go($d,n,ze,Ye,F,Ct,null))}function Fd(){A.forEach($_),U(n.width,n.height,!0)}qs(Pa,Sr,Fd);let xr={};xr.mousedown=Dd,xr.mousemove=Rd,xr.mouseup=Nd,xr.dblclick=Ud,xr.setSeries=(x,b,P,L)=>{let z=ln.match[2];P=z(n,b,P),P!=-1&&Fi(P,L,!0,!1)},gt&&(ve(Xd,g,Dd),ve(dh,g,Rd),ve(qd,g,x=>{Qt(x),mo(!1)}),ve(Yd,g,Kg),ve($d,g,Ud),Th.add(n),n.syncRect=mo);let Sa=n.hooks=i.hooks||{};function bn(x,b,P){zn?Le.push([x,b,P]):x in Sa&&Sa[x].forEach(L=>{L.call(null,n,b,P)})}(i.plugins||[]).forEach(x=>{for(let b in x.hooks)Sa[b]=(Sa[b]||[]).concat(x.hooks[b])});let Od=(x,b,P)=>P,ln=cn({key:null,setSeries:!1,filters:{pub:of,sub:of},scales:[E,y[1]?y[1].scale:null],match:[af,af,Od],values:[null,null]},ct.sync);ln.match.length==2&&ln.match.push(Od),ct.sync=ln;let Bd=ln.key,lh=ip(Bd);function go(x,b,P,L,z,J,at){ln.filters.pub(x,b,P,L,z,J,at)&&lh.pub(x,b,P,L,z,J,at)}lh.sub(n);function jg(x,b,P,L,z,J,at){ln.filters.sub(x,b,P,L,z,J,at)&&xr[x](null,b,P,L,z,J,at)}n.pub=jg;function Qg(){lh.unsub(n),Th.delete(n),vn.clear(),Mh(Pa,Sr,Fd),l.remove(),pt?.remove(),bn("destroy")}n.destroy=Qg;function ch(){bn("init",i,t),ho(t||i.data,!1),H[E]?eh(E,H[E]):uo(),st=Ve.show&&(Ve.width>0||Ve.height>0),et=xt=!0,U(i.width,i.height)}return y.forEach(lr),A.forEach($i),e?e instanceof HTMLElement?(e.appendChild(l),ch()):e(n,ch):ch(),n}En.assign=cn;En.fmtNum=Dh;En.rangeNum=Ia;En.rangeLog=Na;En.rangeAsinh=Ih;En.orient=$s;En.pxRatio=we;En.join=k0;En.fmtDate=Uh,En.tzDate=J0;En.sync=ip;{En.addGap=L_,En.clipGaps=Oa;let i=En.paths={points:cp};i.linear=up,i.stepped=U_,i.bars=F_,i.spline=B_}var Z_="http://www.w3.org/2000/svg";function mp(i,t,e){for(let[n,s]of Object.entries(t??{}))if(!(s==null||s===!1)){if(n==="style"||n.startsWith("on"))throw new Error(`attribute ${n} is not set from here`);i.setAttribute(n,s===!0?"":String(s))}return Eo(i,e),i}function Eo(i,t){for(let e of t)e!=null&&(Array.isArray(e)?Eo(i,e):i.append(e instanceof Node?e:String(e)))}function $t(i,t=null,...e){return mp(document.createElement(i),t,e)}function Nt(i,t=null,...e){return mp(document.createElementNS(Z_,i),t,e)}function Be(i){return document.getElementById(i)}function hn(i){for(;i.lastChild;)i.lastChild.remove()}var ft=i=>String(Math.round(i*100)/100);function un(i){return getComputedStyle(document.documentElement).getPropertyValue(`--${i}`).trim()}function To(i,t){let e=!1,n=()=>{e||(e=!0,s.disconnect(),t())},s=new IntersectionObserver(r=>{r.some(o=>o.isIntersecting)&&n()},{rootMargin:"400px"});return s.observe(i),n}var gp=()=>matchMedia("(prefers-reduced-motion: reduce)").matches;var ws=132,Va=24,Ga=class{constructor(t,e,n,s){this.judged=t;this.further=e;this.atlas=n;this.walk=s}judged;further;atlas;walk;charts=[];shownJoint=-1;build(){this.shownJoint=this.walk.place.joint;for(let n of this.charts)n.remove();hn(this.judged),hn(this.further),this.charts=[];let t=[...new Set(this.walk.facts.bands.flatMap(n=>n.columns))].filter(n=>this.isThere(n)),e=Object.keys(this.atlas.payload.quantities).filter(n=>!t.includes(n)&&this.isThere(n));for(let[n,s]of[[this.judged,t],[this.further,e]])for(let r of s){let o=new Gh(r,this.atlas,this.walk);this.charts.push(o),n.append(o.root),o.later()}t.length||this.judged.append($t("p",null,"No judged quantity was measured along this seam."))}isThere(t){return this.walk.joint.contours.some(e=>e.stations[t]?.some(n=>n!==null))}show(t){t.joint!==this.shownJoint&&this.build();for(let e of this.charts)e.show()}retheme(){for(let t of this.charts)t.redraw()}forPrint(t){for(let e of this.charts)this.judged.contains(e.root)&&e.forPrint(t)}forScreen(){for(let t of this.charts)t.forScreen()}},Gh=class{constructor(t,e,n){this.column=t;this.atlas=e;this.walk=n;let s=n.facts.bands.filter(h=>h.columns.includes(t));this.edges=s.flatMap(h=>h.edges).filter(h=>h.judged===t);let r=new Set(s.map(h=>h.rule));this.findings=e.payload.findings.filter(h=>h.joint===n.joint.id&&(h.quantity===t||r.has(h.rule)&&!s.some(d=>d.columns.length>1)));let o=e.words,a=o.title(t),c=n.facts.tolerances[t],l=s.filter(h=>h.words).map(h=>`${h.title.toLowerCase()}: ${h.words}`),u=o.unit(t);this.root=$t("figure",{class:"chart","data-column":t},$t("figcaption",null,$t("span",{class:"chart-title"},a,u?` / ${u}`:""),this.here,$t("span",{class:"chart-limits"},[...l,...c?[`tolerance ±${c} ${u}`]:[]].join(" · "))),$t("div",{class:"chart-row"},this.plotHost,this.spread),this.summary())}column;atlas;walk;root;plotHost=$t("div",{class:"chart-plot"});spread=$t("div",{class:"chart-spread"});here=$t("b",{class:"chart-here"});cursor=$t("div",{class:"chart-cursor","aria-hidden":!0});plot=null;drawNow=()=>{};edges;findings;summary(){let t=this.walk.joint.contours.map(e=>{let n=e.summary[this.column],s=this.atlas.words,r=this.walk.joint.contours.length>1?`${e.id}: `:"";return n?`${r}least ${s.value(n.min,this.column)}, median ${s.value(n.median,this.column)}, most ${s.value(n.max,this.column)}`:`${r}not measured`});return $t("p",{class:"chart-summary"},t.join(" · "))}later(){this.drawNow=To(this.root,()=>this.draw())}data(){let t=[],e=[],{stretches:n}=this.walk.stretches();for(let{contour:s,start:r}of n){let o=this.walk.joint.contours[s],a=o.stations[this.column];t.length&&(t.push(r-.001),e.push(null)),o.stations.s.forEach((c,l)=>{t.push(r+c),e.push(a?.[l]??null)}),o.closed&&a&&(t.push(r+o.length_mm),e.push(a[0]))}return[t,e]}range(t){let e=t.filter(l=>l!==null),[n,s]=[Math.min(...e),Math.max(...e)];for(let l of this.edges){let u=j_(l.low),h=_p(l.high);u!==null&&(n=Math.min(n,u),s=Math.max(s,u)),h!==null&&h-s<2*Math.max(s-n,Math.abs(s)*.3)&&(s=Math.max(s,h),n=Math.min(n,h))}let r=this.edges.map(l=>_p(l.low)).filter(l=>l!==null&&l>0);r.length&&this.edges.every(l=>l.high===null)&&(s=Math.min(s,Math.max(12*Math.max(...r),2*n)));let{tolerances:o}=this.walk.facts,a=o[this.column]??0;n-=a,s+=a;let c=Math.max((s-n)*.12,Math.abs(s)*.02,.01);return[n-c,s+c]}line(t,e){let{left:n,width:s}=t.bbox;if(e===null)return[];if(typeof e=="number"){let a=t.valToPos(e,"y",!0);return[[n,a],[n+s,a]]}let r=[],{stretches:o}=this.walk.stretches();for(let{contour:a,start:c}of o){let l=this.walk.joint.contours[a];e[l.id]?.forEach((u,h)=>{u!==null&&r.push([t.valToPos(c+l.stations.s[h],"x",!0),t.valToPos(u,"y",!0)])})}return r}draw(){let t=this.data(),[e,n]=this.range(t[1]),s=Math.max(200,this.plotHost.getBoundingClientRect().width||600),r=this.atlas.payload.quantities[this.column]?.decimals??3,o={width:s,height:ws,pxAlign:0,legend:{show:!1},cursor:{sync:{key:"seam"},drag:{x:!0,y:!1,setScale:!0},points:{show:!1},y:!1},scales:{x:{time:!1,range:(a,c,l)=>[c,l]},y:{range:()=>[e,n]}},padding:[8,14,0,0],axes:[{stroke:()=>un("soft"),grid:{show:!1},ticks:{stroke:()=>un("line"),size:4},size:22,font:xp,gap:3},{stroke:()=>un("soft"),grid:{stroke:()=>un("line"),width:1},ticks:{show:!1},size:52,font:xp,space:26,values:(a,c)=>J_(c,r)}],series:[{},{stroke:()=>un("ink"),width:1.6,points:{show:!1},spanGaps:!1}],hooks:{drawAxes:[a=>{this.drawBands(a),this.drawTolerance(a,t)}],draw:[a=>{this.drawFindings(a),this.show()}],ready:[a=>this.listen(a)]}};this.plot=new En(o,t,this.plotHost),this.plot.over.append(this.cursor),this.drawSpread(t[1],e,n),this.show(),new ResizeObserver(()=>{let a=this.plotHost.getBoundingClientRect().width;this.plot&&a>50&&Math.abs(a-this.plot.width)>1&&!this.printing&&this.plot.setSize({width:a,height:ws})}).observe(this.plotHost)}printing=!1;listen(t){let e=0;t.over.addEventListener("mousedown",n=>{e=n.clientX}),t.over.addEventListener("click",n=>{if(Math.abs(n.clientX-e)>4)return;let s=t.posToVal(n.clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")}),t.over.addEventListener("touchmove",n=>{let s=t.posToVal(n.touches[0].clientX-t.over.getBoundingClientRect().left,"x");this.walk.go(this.walk.at(s),"chart")},{passive:!0})}drawBands(t){let{ctx:e}=t,{left:n,top:s,width:r,height:o}=t.bbox;e.save(),e.beginPath(),e.rect(n,s,r,o),e.clip();for(let a of this.edges)for(let[c,l]of[[a.low,!0],[a.high,!1]]){let u=this.line(t,c);if(u.length<2)continue;let h=l?s+o:s;e.save(),e.beginPath(),u.forEach(([f,g],v)=>v?e.lineTo(f,g):e.moveTo(f,g)),e.lineTo(u[u.length-1][0],h),e.lineTo(u[0][0],h),e.closePath(),e.clip(),e.globalAlpha=.5,e.fillStyle=un("outside"),e.fillRect(n,s,r,o),e.globalAlpha=.55,e.strokeStyle=un("outside-line"),e.lineWidth=devicePixelRatio*.7,e.beginPath();let d=7*devicePixelRatio;for(let f=n-o;f<n+r;f+=d)e.moveTo(f,s+o),e.lineTo(f+o,s);e.stroke(),e.restore(),e.strokeStyle=un("limit"),e.lineWidth=1.3*devicePixelRatio,e.setLineDash([6*devicePixelRatio,3*devicePixelRatio]),e.beginPath(),u.forEach(([f,g],v)=>v?e.lineTo(f,g):e.moveTo(f,g)),e.stroke(),e.setLineDash([])}e.restore()}drawTolerance(t,[e,n]){let{tolerances:s}=this.walk.facts,r=s[this.column]??this.edges.map(a=>s[a.column]).find(a=>a!==void 0);if(!r)return;let{ctx:o}=t;o.save(),o.beginPath(),o.rect(t.bbox.left,t.bbox.top,t.bbox.width,t.bbox.height),o.clip(),o.globalAlpha=.22,o.fillStyle=un("walker");for(let a=0;a<e.length;a++){if(n[a]===null)continue;let c=a;for(;c+1<e.length&&n[c+1]!==null;)c++;o.beginPath();for(let l=a;l<=c;l++)o.lineTo(t.valToPos(e[l],"x",!0),t.valToPos(n[l]+r,"y",!0));for(let l=c;l>=a;l--)o.lineTo(t.valToPos(e[l],"x",!0),t.valToPos(n[l]-r,"y",!0));o.closePath(),o.fill(),a=c}o.restore()}drawFindings(t){let{ctx:e}=t,{top:n,height:s}=t.bbox,{stretches:r}=this.walk.stretches(),o=devicePixelRatio;e.save(),e.font=`600 ${11*o}px ${yp}`;let a=[];for(let c of this.findings){let l=this.walk.joint.contours.findIndex(d=>d.id===c.contour);if(l<0||c.from_s===null||c.to_s===null||c.severity==="note")continue;let u=r[l].start,h=c.from_s<=c.to_s?[[c.from_s,c.to_s]]:[[c.from_s,this.walk.joint.contours[l].length_mm],[0,c.to_s]];for(let[d,f]of h){let g=t.valToPos(u+d,"x",!0),v=Math.max(t.valToPos(u+f,"x",!0),g+3*o);if(v<t.bbox.left||g>t.bbox.left+t.bbox.width)continue;e.fillStyle=un(c.waived?"waived":c.severity==="must-fix"?"broken":"near"),e.fillRect(g,n+s-4*o,v-g,4*o);let p=(g+v)/2,m=a.find(y=>Math.abs(y.x-p)<14*o);m?m.findings.push(c):a.push({x:p,findings:[c],colour:String(e.fillStyle)})}}e.textAlign="center";for(let{x:c,findings:l,colour:u}of a)e.fillStyle=u,e.fillText(Ms(l),c,n+11*o);e.restore()}drawSpread(t,e,n){hn(this.spread);let s=new Array(Va).fill(0);for(let l of t)l!==null&&s[Math.min(Va-1,Math.max(0,Math.floor((l-e)/(n-e)*Va)))]++;let r=Math.max(1,...s),o=ws-30,a=o/Va,c=Nt("svg",{viewBox:`0 0 74 ${ws}`,width:74,height:ws,role:"img","aria-label":"Distribution of the values"});s.forEach((l,u)=>{l&&c.append(Nt("rect",{class:"bin",x:4,y:ft(8+o-(u+1)*a),width:ft(Math.max(2,60*Math.sqrt(l/r))),height:ft(a-.7)}))});for(let l of this.edges)for(let u of[l.low,l.high]){if(typeof u!="number"||u<e||u>n)continue;let h=8+o*(1-(u-e)/(n-e));c.append(Nt("line",{class:"bin-limit",x1:0,x2:74,y1:ft(h),y2:ft(h)}))}c.append(Nt("text",{class:"side",x:4,y:ws-8},"spread √n")),this.spread.append(c)}show(){let{contour:t,place:e}=this.walk,n=t.stations[this.column]?.[e.station]??null;if(this.here.textContent=this.atlas.words.value(n,this.column),this.here.dataset.value=String(n),!this.plot)return;let s=this.plot.valToPos(this.walk.unrolled,"x"),r=s>=-1&&s<=this.plot.bbox.width/En.pxRatio+1;this.cursor.hidden=!r,this.cursor.style.transform=`translateX(${ft(s)}px)`,this.cursor.dataset.s=this.walk.unrolled.toFixed(4)}redraw(){this.plot?.redraw(!1,!0)}forPrint(t){this.drawNow(),this.printing=!0,this.plot?.setSize({width:t,height:ws})}forScreen(){this.printing&&(this.printing=!1,this.plot?.setSize({width:Math.max(200,this.plotHost.getBoundingClientRect().width),height:ws}))}remove(){this.plot?.destroy()}};function J_(i,t){let e=K_(i,t),n=i.map(s=>(Math.abs(s)<.5*10**-e?0:s).toFixed(e));return n.map((s,r)=>i.some((o,a)=>n[a]===s&&Math.abs(o-Number(s))<Math.abs(i[r]-Number(s))-1e-12)?"":s)}function K_(i,t){for(let e=0;e<t;e++)if(i.every(n=>Math.abs(Number(n.toFixed(e))-n)<1e-9))return e;return t}var Ha=i=>i===null?[]:typeof i=="number"?[i]:Object.values(i).flat().filter(t=>t!==null),j_=i=>Ha(i).length?Math.min(...Ha(i)):null,_p=i=>Ha(i).length?Math.max(...Ha(i)):null,yp='"Barlow Semi Condensed", "Arial Narrow", sans-serif',xp=`500 12px ${yp}`;var Wa=(i,t)=>i[0]*t[0]+i[1]*t[1]+i[2]*t[2],Q_=(i,t)=>[i[1]*t[2]-i[2]*t[1],i[2]*t[0]-i[0]*t[2],i[0]*t[1]-i[1]*t[0]],vp=i=>{let t=Math.hypot(...i);return[i[0]/t,i[1]/t,i[2]/t]};function Zs(i){let t=vp([-i[0],-i[1],-i[2]]),e=[[1,0,0],[0,1,0],[0,0,1]],n=e.find(o=>Math.abs(Wa(o,t))<.8)??e[1],s=Wa(n,t),r=vp([n[0]-s*t[0],n[1]-s*t[1],n[2]-s*t[2]]);return{right:r,up:Q_(t,r),toward:t}}var Pr=(i,t)=>[Wa(i.right,t),Wa(i.up,t)];function Mp(i,t,e,n,s,r,o){let a=new Float32Array(e*n).fill(-1/0),c=new Int32Array(e*n).fill(-1),l=new Float32Array(e*n*3),{right:u,up:h,toward:d}=t,f=0;for(let g of i){let{positions:v,triangles:p}=g,m=v.length/3,y=new Float32Array(m),A=new Float32Array(m),M=new Float32Array(m);for(let R=0;R<m;R++){let[E,_,T]=[v[3*R],v[3*R+1],v[3*R+2]];y[R]=(u[0]*E+u[1]*_+u[2]*T-r)*s,A[R]=(o-(h[0]*E+h[1]*_+h[2]*T))*s,M[R]=d[0]*E+d[1]*_+d[2]*T}for(let R=0;R<p.length;R+=3){let[E,_,T]=[p[R],p[R+1],p[R+2]],O=(y[_]-y[E])*(A[T]-A[E])-(A[_]-A[E])*(y[T]-y[E]);if(Math.abs(O)<1e-9)continue;let N=-((M[_]-M[E])*(A[T]-A[E])-(M[T]-M[E])*(A[_]-A[E]))/O,I=-((M[T]-M[E])*(y[_]-y[E])-(M[_]-M[E])*(y[T]-y[E]))/O,V=Math.max(0,Math.ceil(Math.min(y[E],y[_],y[T])-.5)),G=Math.min(e-1,Math.floor(Math.max(y[E],y[_],y[T])-.5)),D=Math.max(0,Math.ceil(Math.min(A[E],A[_],A[T])-.5)),H=Math.min(n-1,Math.floor(Math.max(A[E],A[_],A[T])-.5)),Y=Math.hypot(N/s,I/s,1/s/s)||1,B=[N*s,-I*s,1],lt=Math.hypot(B[0],B[1],B[2])||Y,Z=f+(g.face.length?g.face[R/3]:0);for(let K=D;K<=H;K++)for(let tt=V;tt<=G;tt++){let ut=((tt+.5-y[E])*(A[T]-A[E])-(K+.5-A[E])*(y[T]-y[E]))/O,ct=((K+.5-A[E])*(y[_]-y[E])-(tt+.5-y[E])*(A[_]-A[E]))/O;if(ut<-1e-6||ct<-1e-6||ut+ct>1+1e-6)continue;let j=M[E]+ut*(M[_]-M[E])+ct*(M[T]-M[E]),gt=K*e+tt;j<=a[gt]||(a[gt]=j,c[gt]=Z,l[3*gt]=B[0]/lt,l[3*gt+1]=B[1]/lt,l[3*gt+2]=B[2]/lt)}}f+=1e6}return{width:e,height:n,depth:a,face:c,normal:l}}function Sp(i,t,e,n,s,r){let{width:o,height:a,depth:c,face:l,normal:u}=t,h=i.data,d=(p,m,y)=>{for(let A=0;A<3;A++)h[4*p+A]+=(m[A]-h[4*p+A])*y},[f,g]=[1/0,-1/0];for(let p of c)p>-1/0&&(p<f&&(f=p),p>g&&(g=p));let v=Math.max(1e-6,g-f);for(let p=0;p<o*a;p++){if(l[p]<0)continue;let m=-.5*u[3*p]+.5*u[3*p+1],y=.12*(1-(c[p]-f)/v)+Math.max(0,-m)*.3+(1-u[3*p+2])*.1;d(p,e,s),d(p,n,Math.min(.5,y)*s)}for(let p=0;p<a-1;p++)for(let m=0;m<o-1;m++){let y=p*o+m,A=0;for(let M of[y+1,y+o]){if(l[y]===l[M])continue;if(l[y]<0||l[M]<0){A=1;continue}u[3*y]*u[3*M]+u[3*y+1]*u[3*M+1]+u[3*y+2]*u[3*M+2]<.97&&(A=Math.max(A,.6)),Math.abs(c[y]-c[M])>.15&&(A=Math.max(A,.85))}A&&d(y,n,A*r)}}var Xa=["unknown","within","near","broken","waived","look","noted"];var qa=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;t.append(this.canvas,this.overlay),new ResizeObserver(()=>this.draw()).observe(t);let s=r=>{let o=this.overlay.getBoundingClientRect();this.pick((r.clientX-o.left)*(this.view.width/o.width),(r.clientY-o.top)*(this.view.height/o.height))};this.overlay.addEventListener("pointerdown",r=>{this.view&&(this.overlay.setPointerCapture(r.pointerId),s(r))}),this.overlay.addEventListener("pointermove",r=>{this.view&&r.buttons&&s(r)})}host;atlas;walk;canvas=$t("canvas",{"aria-hidden":!0});overlay=Nt("svg",{role:"group"});cursor=Nt("g",{class:"plan-cursor"});view=null;shownJoint=-1;draw(t){let e=t??this.host.getBoundingClientRect();if(e.width<40||e.height<40)return;let n=Zs(this.walk.joint.beam),[s,r,o,a]=[1/0,-1/0,1/0,-1/0],c=(g,v)=>{s=Math.min(s,g),r=Math.max(r,g),o=Math.min(o,v),a=Math.max(a,v)};for(let g of this.walk.joint.contours)Vi(g).forEach(v=>c(...Pr(n,v)));let l=new Set([...this.walk.joint.cover,...this.walk.joint.base]),u=this.atlas.meshes.filter(g=>l.has(g.part));for(let g of u)for(let v=0;v<g.positions.length;v+=3)c(...Pr(n,[g.positions[v],g.positions[v+1],g.positions[v+2]]));let h=t?34:40,d=Math.min((e.width-2*h)/Math.max(1e-6,r-s),(e.height-2*h)/Math.max(1e-6,a-o)),f={scale:d,width:e.width,height:e.height,plane:n,x:(s+r)/2-e.width/2/d,y:(o+a)/2+e.height/2/d};this.view=f,this.shownJoint=this.walk.place.joint,this.paintRelief(u,f),this.drawSeam(f),this.show(this.walk.place)}paintRelief(t,e){let n=Math.min(2,Math.max(1,devicePixelRatio)),[s,r]=[Math.round(e.width*n),Math.round(e.height*n)];this.canvas.width=s,this.canvas.height=r;let o=this.canvas.getContext("2d");if(!o||!t.length)return;let a=h=>ex(un(h)),c=o.createImageData(s,r),l=a("sheet");for(let h=0;h<s*r;h++)c.data.set([...l,255],4*h);let u=new Set(this.walk.joint.cover);for(let h of[!1,!0]){let d=t.filter(g=>u.has(g.part)===h);if(!d.length)continue;let f=Mp(d,e.plane,s,r,e.scale*n,e.x,e.y);Sp(c,f,a(h?"cover-fill":"base-fill"),a("ink"),h?.6:.9,h?.55:.25)}o.putImageData(c,0,0)}at(t){let[e,n]=Pr(this.view.plane,t);return[(e-this.view.x)*this.view.scale,(this.view.y-n)*this.view.scale]}drawSeam(t){hn(this.overlay),this.overlay.setAttribute("viewBox",`0 0 ${ft(t.width)} ${ft(t.height)}`),this.overlay.setAttribute("aria-label","The seam seen along the light, with the findings as numbered section marks");let e=this.walk.facts;for(let n of this.walk.joint.contours){let s=Vi(n).map(r=>this.at(r));this.overlay.append(Nt("path",{class:"seam casing",d:Hh(s,n.closed)}));for(let[r,o,a]of e.worst[n.id]??[]){let c=o+1<s.length?o+1:o,l=s.slice(r,c+1);n.closed&&o===s.length-1&&l.push(s[0]),this.overlay.append(Nt("path",{class:`seam ${Xa[a]}`,d:Hh(l,!1)})),a===3&&this.overlay.append(Nt("path",{class:"seam broken-core",d:Hh(l,!1)}))}}this.drawMarks(),this.drawAxes(t),this.overlay.append(this.cursor)}drawMarks(){let t=[];for(let e of this.atlas.payload.findings){if(e.joint!==this.walk.joint.id||e.station===null||e.severity==="note")continue;let n=this.walk.joint.contours.find(l=>l.id===e.contour);if(!n)continue;let[s,r]=this.at(Vi(n)[e.station]),[o,a]=this.normal(n,e.station),c=t.find(l=>Math.hypot(l.x-s,l.y-r)<18);c?c.findings.push(e):t.push({x:s,y:r,nx:o,ny:a,findings:[e]})}for(let{x:e,y:n,nx:s,ny:r,findings:o}of t){let a=o[0],c=a.waived?"waived":a.severity,l=Nt("g",{class:`section-mark ${c}`,tabindex:0,role:"button","data-finding":a.n,"aria-label":`Finding ${o.map(f=>f.n).join(", ")}: ${a.title}`});for(let f of[1,-1]){let[g,v]=[e+f*s*8,n+f*r*8],[p,m]=[e+f*s*19,n+f*r*19];l.append(Nt("path",{class:"cut",d:`M${ft(g)} ${ft(v)}L${ft(p)} ${ft(m)}`}),Nt("path",{class:"cut-arrow",d:tx(p,m,-r,s)}))}let[u,h]=[e+s*31,n+r*31];l.append(Nt("text",{x:ft(u),y:ft(h),"text-anchor":"middle","dominant-baseline":"central"},Ms(o)));let d=f=>{f.stopPropagation(),this.walk.showFinding(a)};l.addEventListener("click",d),l.addEventListener("pointerdown",f=>f.stopPropagation()),l.addEventListener("keydown",f=>{(f.key==="Enter"||f.key===" ")&&(f.preventDefault(),d(f))}),this.overlay.append(l)}}normal(t,e){let[n,s]=Pr(this.view.plane,t.stations.u[e]),r=Math.hypot(n,s)||1;return[n/r,-s/r]}drawAxes(t){let e=[26,t.height-26],n=Nt("g",{class:"axes","aria-hidden":!0});["X","Y","Z"].forEach((s,r)=>{let o=[0,0,0];o[r]=1;let[a,c]=Pr(t.plane,o);if(Math.hypot(a,c)<.3)return;let l=[e[0]+a*20,e[1]-c*20];n.append(Nt("path",{d:`M${ft(e[0])} ${ft(e[1])}L${ft(l[0])} ${ft(l[1])}`}),Nt("text",{x:ft(l[0]+a*7),y:ft(l[1]-c*7),"text-anchor":"middle","dominant-baseline":"central"},s))}),this.overlay.append(n)}show(t){if(!this.view)return;if(t.joint!==this.shownJoint){this.draw();return}let e=this.walk.contour,[n,s]=this.at(Vi(e)[t.station]),[r,o]=this.normal(e,t.station);hn(this.cursor),this.cursor.append(Nt("path",{class:"casing",d:`M${ft(n-r*15)} ${ft(s-o*15)}L${ft(n+r*15)} ${ft(s+o*15)}`}),Nt("path",{d:`M${ft(n-r*15)} ${ft(s-o*15)}L${ft(n+r*15)} ${ft(s+o*15)}`}),Nt("circle",{cx:ft(n),cy:ft(s),r:5.5})),this.cursor.setAttribute("data-x",ft(n)),this.cursor.setAttribute("data-y",ft(s))}pick(t,e){let n={contour:0,station:0},s=1/0;this.walk.joint.contours.forEach((r,o)=>Vi(r).forEach((a,c)=>{let[l,u]=this.at(a),h=Math.hypot(l-t,u-e);h<s&&(s=h,n={contour:o,station:c})})),this.walk.go(n,"plan")}},bp=new WeakMap;function Vi(i){let t=bp.get(i);if(!t){let{x:e,y:n,z:s}=i.stations;t=e.map((r,o)=>[e[o],n[o],s[o]]),bp.set(i,t)}return t}function Hh(i,t){return"M"+i.map(([e,n])=>`${ft(e)} ${ft(n)}`).join("L")+(t?"Z":"")}function tx(i,t,e,n){return`M${ft(i+e*9)} ${ft(t+n*9)}L${ft(i-n*3.4)} ${ft(t+e*3.4)}L${ft(i+n*3.4)} ${ft(t-e*3.4)}Z`}function ex(i){let t=i.replace("#",""),e=Number.parseInt(t.length===3?[...t].map(n=>n+n).join(""):t,16);return[e>>16&255,e>>8&255,e&255]}var Os={LEFT:0,MIDDLE:1,RIGHT:2,ROTATE:0,DOLLY:1,PAN:2},Bs={ROTATE:0,PAN:1,DOLLY_PAN:2,DOLLY_ROTATE:3},jp=0,yu=1,Qp=2;var sa=1,tm=2,eo=3,Ri=0,In=1,$n=2,ir=0,no=1,vu=2,Mu=3,Su=4,em=5;var sr=100,nm=101,im=102,sm=103,rm=104,om=200,am=201,lm=202,cm=203,bu=204,wu=205,hm=206,um=207,dm=208,fm=209,pm=210,mm=211,gm=212,_m=213,xm=214,_l=0,xl=1,yl=2,Xr=3,vl=4,Ml=5,Sl=6,bl=7,Zl=0,ym=1,vm=2,Xi=0,Eu=1,Tu=2,Au=3,Ru=4,Cu=5,Pu=6,Iu=7;var Lu=300,rr=301,io=302,Jl=303,Kl=304,wl=1e3,Hi=1001,El=1002,An=1003,Mm=1004;var ra=1005;var Yn=1006,jl=1007;var ds=1008;var Jn=1009,Du=1010,Nu=1011,so=1012,Ql=1013,Ci=1014,Pi=1015,Ii=1016,tc=1017,ec=1018,or=1020,Uu=35902,Fu=35899,Ou=1021,Bu=1022,Li=1023,as=1026,fs=1027,ku=1028,nc=1029,ks=1030,ic=1031;var sc=1033,oa=33776,aa=33777,la=33778,ca=33779,rc=35840,oc=35841,ac=35842,lc=35843,cc=36196,hc=37492,uc=37496,dc=37488,fc=37489,ha=37490,pc=37491,mc=37808,gc=37809,_c=37810,xc=37811,yc=37812,vc=37813,Mc=37814,Sc=37815,bc=37816,wc=37817,Ec=37818,Tc=37819,Ac=37820,Rc=37821,Cc=36492,Pc=36494,Ic=36495,Lc=36283,Dc=36284,ua=36285,Nc=36286;var Uo=2300,Tl=2301,ml=2302,du=2303,fu=2400,pu=2401,mu=2402;var Sm=3200;var Uc=0,bm=1,ps="",ai="srgb",Fo="srgb-linear",Oo="linear",Re="srgb";var gl=7680;var wm=519,Em=512,Tm=513,Am=514,zu=515,Rm=516,Cm=517,Vu=518,Gu=519,Pm=35044;var Hu="300 es",gi=2e3,qr=2001;function nx(i){for(let t=i.length-1;t>=0;--t)if(i[t]>=65535)return!0;return!1}function ix(i){return ArrayBuffer.isView(i)&&!(i instanceof DataView)}function Bo(i){return document.createElementNS("http://www.w3.org/1999/xhtml",i)}function Im(){let i=Bo("canvas");return i.style.display="block",i}var wp={},Yr=null;function Wu(...i){let t="THREE."+i.shift();Yr?Yr("log",t,...i):console.log(t,...i)}function Lm(i){let t=i[0];if(typeof t=="string"&&t.startsWith("TSL:")){let e=i[1];e&&e.isStackTrace?i[0]+=" "+e.getLocation():i[1]='Stack trace not available. Enable "THREE.Node.captureStackTrace" to capture stack traces.'}return i}function Zt(...i){i=Lm(i);let t="THREE."+i.shift();if(Yr)Yr("warn",t,...i);else{let e=i[0];e&&e.isStackTrace?console.warn(e.getError(t)):console.warn(t,...i)}}function ne(...i){i=Lm(i);let t="THREE."+i.shift();if(Yr)Yr("error",t,...i);else{let e=i[0];e&&e.isStackTrace?console.error(e.getError(t)):console.error(t,...i)}}function Lo(...i){let t=i.join(" ");t in wp||(wp[t]=!0,Zt(...i))}function Dm(i,t,e){return new Promise(function(n,s){function r(){switch(i.clientWaitSync(t,i.SYNC_FLUSH_COMMANDS_BIT,0)){case i.WAIT_FAILED:s();break;case i.TIMEOUT_EXPIRED:setTimeout(r,e);break;default:n()}}setTimeout(r,e)})}var Nm={[_l]:_l,[yl]:Sl,[vl]:vl,[Xr]:Ml,[xl]:xl,[Sl]:yl,[bl]:bl,[Ml]:Xr},Ai=class{addEventListener(t,e){this._listeners===void 0&&(this._listeners={});let n=this._listeners;n[t]===void 0&&(n[t]=[]),n[t].indexOf(e)===-1&&n[t].push(e)}hasEventListener(t,e){let n=this._listeners;return n===void 0?!1:n[t]!==void 0&&n[t].indexOf(e)!==-1}removeEventListener(t,e){let n=this._listeners;if(n===void 0)return;let s=n[t];if(s!==void 0){let r=s.indexOf(e);r!==-1&&s.splice(r,1)}}dispatchEvent(t){let e=this._listeners;if(e===void 0)return;let n=e[t.type];if(n!==void 0){t.target=this;let s=n.slice(0);for(let r=0,o=s.length;r<o;r++)s[r].call(this,t);t.target=null}}},Dn=["00","01","02","03","04","05","06","07","08","09","0a","0b","0c","0d","0e","0f","10","11","12","13","14","15","16","17","18","19","1a","1b","1c","1d","1e","1f","20","21","22","23","24","25","26","27","28","29","2a","2b","2c","2d","2e","2f","30","31","32","33","34","35","36","37","38","39","3a","3b","3c","3d","3e","3f","40","41","42","43","44","45","46","47","48","49","4a","4b","4c","4d","4e","4f","50","51","52","53","54","55","56","57","58","59","5a","5b","5c","5d","5e","5f","60","61","62","63","64","65","66","67","68","69","6a","6b","6c","6d","6e","6f","70","71","72","73","74","75","76","77","78","79","7a","7b","7c","7d","7e","7f","80","81","82","83","84","85","86","87","88","89","8a","8b","8c","8d","8e","8f","90","91","92","93","94","95","96","97","98","99","9a","9b","9c","9d","9e","9f","a0","a1","a2","a3","a4","a5","a6","a7","a8","a9","aa","ab","ac","ad","ae","af","b0","b1","b2","b3","b4","b5","b6","b7","b8","b9","ba","bb","bc","bd","be","bf","c0","c1","c2","c3","c4","c5","c6","c7","c8","c9","ca","cb","cc","cd","ce","cf","d0","d1","d2","d3","d4","d5","d6","d7","d8","d9","da","db","dc","dd","de","df","e0","e1","e2","e3","e4","e5","e6","e7","e8","e9","ea","eb","ec","ed","ee","ef","f0","f1","f2","f3","f4","f5","f6","f7","f8","f9","fa","fb","fc","fd","fe","ff"],Ep=1234567,Do=Math.PI/180,$r=180/Math.PI;function ro(){let i=Math.random()*4294967295|0,t=Math.random()*4294967295|0,e=Math.random()*4294967295|0,n=Math.random()*4294967295|0;return(Dn[i&255]+Dn[i>>8&255]+Dn[i>>16&255]+Dn[i>>24&255]+"-"+Dn[t&255]+Dn[t>>8&255]+"-"+Dn[t>>16&15|64]+Dn[t>>24&255]+"-"+Dn[e&63|128]+Dn[e>>8&255]+"-"+Dn[e>>16&255]+Dn[e>>24&255]+Dn[n&255]+Dn[n>>8&255]+Dn[n>>16&255]+Dn[n>>24&255]).toLowerCase()}function me(i,t,e){return Math.max(t,Math.min(e,i))}function Xu(i,t){return(i%t+t)%t}function sx(i,t,e,n,s){return n+(i-t)*(s-n)/(e-t)}function rx(i,t,e){return i!==t?(e-i)/(t-i):0}function No(i,t,e){return(1-e)*i+e*t}function ox(i,t,e,n){return No(i,t,1-Math.exp(-e*n))}function ax(i,t=1){return t-Math.abs(Xu(i,t*2)-t)}function lx(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*(3-2*i))}function cx(i,t,e){return i<=t?0:i>=e?1:(i=(i-t)/(e-t),i*i*i*(i*(i*6-15)+10))}function hx(i,t){return i+Math.floor(Math.random()*(t-i+1))}function ux(i,t){return i+Math.random()*(t-i)}function dx(i){return i*(.5-Math.random())}function fx(i){i!==void 0&&(Ep=i);let t=Ep+=1831565813;return t=Math.imul(t^t>>>15,t|1),t^=t+Math.imul(t^t>>>7,t|61),((t^t>>>14)>>>0)/4294967296}function px(i){return i*Do}function mx(i){return i*$r}function gx(i){return i>0&&Number.isInteger(i)&&2**Math.round(Math.log2(i))===i}function _x(i){return Math.pow(2,Math.ceil(Math.log(i)/Math.LN2))}function qu(i){return Math.pow(2,Math.floor(Math.log(i)/Math.LN2))}function xx(i,t,e,n,s){let r=Math.cos,o=Math.sin,a=r(e/2),c=o(e/2),l=r((t+n)/2),u=o((t+n)/2),h=r((t-n)/2),d=o((t-n)/2),f=r((n-t)/2),g=o((n-t)/2);switch(s){case"XYX":i.set(a*u,c*h,c*d,a*l);break;case"YZY":i.set(c*d,a*u,c*h,a*l);break;case"ZXZ":i.set(c*h,c*d,a*u,a*l);break;case"XZX":i.set(a*u,c*g,c*f,a*l);break;case"YXY":i.set(c*f,a*u,c*g,a*l);break;case"ZYZ":i.set(c*g,c*f,a*u,a*l);break;default:Zt("MathUtils: .setQuaternionFromProperEuler() encountered an unknown order: "+s)}}function Yu(i){switch(i.constructor){case Uint32Array:return 4294967295;case Uint16Array:return 65535;case Uint8Array:case Uint8ClampedArray:return 255;case Int32Array:return 2147483647;case Int16Array:return 32767;case Int8Array:return 127;default:return}}function Um(i,t){if(t.constructor===Float32Array)return i;let e=Yu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.max(i/e,-1)}function Fm(i,t){if(t.constructor===Float32Array)return i;let e=Yu(t);if(e===void 0)throw new Error("THREE.MathUtils: Invalid component type.");return Math.round(i*e)}var $u={DEG2RAD:Do,RAD2DEG:$r,generateUUID:ro,clamp:me,euclideanModulo:Xu,mapLinear:sx,inverseLerp:rx,lerp:No,damp:ox,pingpong:ax,smoothstep:lx,smootherstep:cx,randInt:hx,randFloat:ux,randFloatSpread:dx,seededRandom:fx,degToRad:px,radToDeg:mx,isPowerOfTwo:gx,ceilPowerOfTwo:_x,floorPowerOfTwo:qu,setQuaternionFromProperEuler:xx,normalize:Fm,denormalize:Um},ie=class{static{this.prototype.isVector2=!0}constructor(t=0,e=0){this.x=t,this.y=e}get width(){return this.x}set width(t){this.x=t}get height(){return this.y}set height(t){this.y=t}set(t,e){return this.x=t,this.y=e,this}setScalar(t){return this.x=t,this.y=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;default:throw new Error("THREE.Vector2: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;default:throw new Error("THREE.Vector2: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y)}copy(t){return this.x=t.x,this.y=t.y,this}add(t){return this.x+=t.x,this.y+=t.y,this}addScalar(t){return this.x+=t,this.y+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this}subScalar(t){return this.x-=t,this.y-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this}multiply(t){return this.x*=t.x,this.y*=t.y,this}multiplyScalar(t){return this.x*=t,this.y*=t,this}divide(t){return this.x/=t.x,this.y/=t.y,this}divideScalar(t){return this.multiplyScalar(1/t)}applyMatrix3(t){let e=this.x,n=this.y,s=t.elements;return this.x=s[0]*e+s[3]*n+s[6],this.y=s[1]*e+s[4]*n+s[7],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this}negate(){return this.x=-this.x,this.y=-this.y,this}dot(t){return this.x*t.x+this.y*t.y}cross(t){return this.x*t.y-this.y*t.x}lengthSq(){return this.x*this.x+this.y*this.y}length(){return Math.sqrt(this.x*this.x+this.y*this.y)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)}normalize(){return this.divideScalar(this.length()||1)}angle(){return Math.atan2(-this.y,-this.x)+Math.PI}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y;return e*e+n*n}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this}equals(t){return t.x===this.x&&t.y===this.y}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this}rotateAround(t,e){let n=Math.cos(e),s=Math.sin(e),r=this.x-t.x,o=this.y-t.y;return this.x=r*n-o*s+t.x,this.y=r*s+o*n+t.y,this}random(){return this.x=Math.random(),this.y=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y}},li=class{constructor(t=0,e=0,n=0,s=1){this.isQuaternion=!0,this._x=t,this._y=e,this._z=n,this._w=s}static slerpFlat(t,e,n,s,r,o,a){let c=n[s+0],l=n[s+1],u=n[s+2],h=n[s+3],d=r[o+0],f=r[o+1],g=r[o+2],v=r[o+3];if(h!==v||c!==d||l!==f||u!==g){let p=c*d+l*f+u*g+h*v;p<0&&(d=-d,f=-f,g=-g,v=-v,p=-p);let m=1-a;if(p<.9995){let y=Math.acos(p),A=Math.sin(y);m=Math.sin(m*y)/A,a=Math.sin(a*y)/A,c=c*m+d*a,l=l*m+f*a,u=u*m+g*a,h=h*m+v*a}else{c=c*m+d*a,l=l*m+f*a,u=u*m+g*a,h=h*m+v*a;let y=1/Math.sqrt(c*c+l*l+u*u+h*h);c*=y,l*=y,u*=y,h*=y}}t[e]=c,t[e+1]=l,t[e+2]=u,t[e+3]=h}static multiplyQuaternionsFlat(t,e,n,s,r,o){let a=n[s],c=n[s+1],l=n[s+2],u=n[s+3],h=r[o],d=r[o+1],f=r[o+2],g=r[o+3];return t[e]=a*g+u*h+c*f-l*d,t[e+1]=c*g+u*d+l*h-a*f,t[e+2]=l*g+u*f+a*d-c*h,t[e+3]=u*g-a*h-c*d-l*f,t}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get w(){return this._w}set w(t){this._w=t,this._onChangeCallback()}set(t,e,n,s){return this._x=t,this._y=e,this._z=n,this._w=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._w)}copy(t){return this._x=t.x,this._y=t.y,this._z=t.z,this._w=t.w,this._onChangeCallback(),this}setFromEuler(t,e=!0){let n=t._x,s=t._y,r=t._z,o=t._order,a=Math.cos,c=Math.sin,l=a(n/2),u=a(s/2),h=a(r/2),d=c(n/2),f=c(s/2),g=c(r/2);switch(o){case"XYZ":this._x=d*u*h+l*f*g,this._y=l*f*h-d*u*g,this._z=l*u*g+d*f*h,this._w=l*u*h-d*f*g;break;case"YXZ":this._x=d*u*h+l*f*g,this._y=l*f*h-d*u*g,this._z=l*u*g-d*f*h,this._w=l*u*h+d*f*g;break;case"ZXY":this._x=d*u*h-l*f*g,this._y=l*f*h+d*u*g,this._z=l*u*g+d*f*h,this._w=l*u*h-d*f*g;break;case"ZYX":this._x=d*u*h-l*f*g,this._y=l*f*h+d*u*g,this._z=l*u*g-d*f*h,this._w=l*u*h+d*f*g;break;case"YZX":this._x=d*u*h+l*f*g,this._y=l*f*h+d*u*g,this._z=l*u*g-d*f*h,this._w=l*u*h-d*f*g;break;case"XZY":this._x=d*u*h-l*f*g,this._y=l*f*h-d*u*g,this._z=l*u*g+d*f*h,this._w=l*u*h+d*f*g;break;default:Zt("Quaternion: .setFromEuler() encountered an unknown order: "+o)}return e===!0&&this._onChangeCallback(),this}setFromAxisAngle(t,e){let n=e/2,s=Math.sin(n);return this._x=t.x*s,this._y=t.y*s,this._z=t.z*s,this._w=Math.cos(n),this._onChangeCallback(),this}setFromRotationMatrix(t){let e=t.elements,n=e[0],s=e[4],r=e[8],o=e[1],a=e[5],c=e[9],l=e[2],u=e[6],h=e[10],d=n+a+h;if(d>0){let f=.5/Math.sqrt(d+1);this._w=.25/f,this._x=(u-c)*f,this._y=(r-l)*f,this._z=(o-s)*f}else if(n>a&&n>h){let f=2*Math.sqrt(1+n-a-h);this._w=(u-c)/f,this._x=.25*f,this._y=(s+o)/f,this._z=(r+l)/f}else if(a>h){let f=2*Math.sqrt(1+a-n-h);this._w=(r-l)/f,this._x=(s+o)/f,this._y=.25*f,this._z=(c+u)/f}else{let f=2*Math.sqrt(1+h-n-a);this._w=(o-s)/f,this._x=(r+l)/f,this._y=(c+u)/f,this._z=.25*f}return this._onChangeCallback(),this}setFromUnitVectors(t,e){let n=t.dot(e)+1;return n<1e-8?(n=0,Math.abs(t.x)>Math.abs(t.z)?(this._x=-t.y,this._y=t.x,this._z=0,this._w=n):(this._x=0,this._y=-t.z,this._z=t.y,this._w=n)):(this._x=t.y*e.z-t.z*e.y,this._y=t.z*e.x-t.x*e.z,this._z=t.x*e.y-t.y*e.x,this._w=n),this.normalize()}angleTo(t){return 2*Math.acos(Math.abs(me(this.dot(t),-1,1)))}rotateTowards(t,e){let n=this.angleTo(t);if(n===0)return this;let s=Math.min(1,e/n);return this.slerp(t,s),this}identity(){return this.set(0,0,0,1)}invert(){return this.conjugate()}conjugate(){return this._x*=-1,this._y*=-1,this._z*=-1,this._onChangeCallback(),this}dot(t){return this._x*t._x+this._y*t._y+this._z*t._z+this._w*t._w}lengthSq(){return this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w}length(){return Math.sqrt(this._x*this._x+this._y*this._y+this._z*this._z+this._w*this._w)}normalize(){let t=this.length();return t===0?(this._x=0,this._y=0,this._z=0,this._w=1):(t=1/t,this._x=this._x*t,this._y=this._y*t,this._z=this._z*t,this._w=this._w*t),this._onChangeCallback(),this}multiply(t){return this.multiplyQuaternions(this,t)}premultiply(t){return this.multiplyQuaternions(t,this)}multiplyQuaternions(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=e._x,c=e._y,l=e._z,u=e._w;return this._x=n*u+o*a+s*l-r*c,this._y=s*u+o*c+r*a-n*l,this._z=r*u+o*l+n*c-s*a,this._w=o*u-n*a-s*c-r*l,this._onChangeCallback(),this}slerp(t,e){let n=t._x,s=t._y,r=t._z,o=t._w,a=this.dot(t);a<0&&(n=-n,s=-s,r=-r,o=-o,a=-a);let c=1-e;if(a<.9995){let l=Math.acos(a),u=Math.sin(l);c=Math.sin(c*l)/u,e=Math.sin(e*l)/u,this._x=this._x*c+n*e,this._y=this._y*c+s*e,this._z=this._z*c+r*e,this._w=this._w*c+o*e,this._onChangeCallback()}else this._x=this._x*c+n*e,this._y=this._y*c+s*e,this._z=this._z*c+r*e,this._w=this._w*c+o*e,this.normalize();return this}slerpQuaternions(t,e,n){return this.copy(t).slerp(e,n)}random(){let t=2*Math.PI*Math.random(),e=2*Math.PI*Math.random(),n=Math.random(),s=Math.sqrt(1-n),r=Math.sqrt(n);return this.set(s*Math.sin(t),s*Math.cos(t),r*Math.sin(e),r*Math.cos(e))}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._w===this._w}fromArray(t,e=0){return this._x=t[e],this._y=t[e+1],this._z=t[e+2],this._w=t[e+3],this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._w,t}fromBufferAttribute(t,e){return this._x=t.getX(e),this._y=t.getY(e),this._z=t.getZ(e),this._w=t.getW(e),this._onChangeCallback(),this}toJSON(){return this.toArray()}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._w}},W=class{static{this.prototype.isVector3=!0}constructor(t=0,e=0,n=0){this.x=t,this.y=e,this.z=n}set(t,e,n){return n===void 0&&(n=this.z),this.x=t,this.y=e,this.z=n,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;default:throw new Error("THREE.Vector3: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;default:throw new Error("THREE.Vector3: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this}multiplyVectors(t,e){return this.x=t.x*e.x,this.y=t.y*e.y,this.z=t.z*e.z,this}applyEuler(t){return this.applyQuaternion(Tp.setFromEuler(t))}applyAxisAngle(t,e){return this.applyQuaternion(Tp.setFromAxisAngle(t,e))}applyMatrix3(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[3]*n+r[6]*s,this.y=r[1]*e+r[4]*n+r[7]*s,this.z=r[2]*e+r[5]*n+r[8]*s,this}applyNormalMatrix(t){return this.applyMatrix3(t).normalize()}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=t.elements,o=1/(r[3]*e+r[7]*n+r[11]*s+r[15]);return this.x=(r[0]*e+r[4]*n+r[8]*s+r[12])*o,this.y=(r[1]*e+r[5]*n+r[9]*s+r[13])*o,this.z=(r[2]*e+r[6]*n+r[10]*s+r[14])*o,this}applyQuaternion(t){let e=this.x,n=this.y,s=this.z,r=t.x,o=t.y,a=t.z,c=t.w,l=2*(o*s-a*n),u=2*(a*e-r*s),h=2*(r*n-o*e);return this.x=e+c*l+o*h-a*u,this.y=n+c*u+a*l-r*h,this.z=s+c*h+r*u-o*l,this}project(t){return this.applyMatrix4(t.matrixWorldInverse).applyMatrix4(t.projectionMatrix)}unproject(t){return this.applyMatrix4(t.projectionMatrixInverse).applyMatrix4(t.matrixWorld)}transformDirection(t){let e=this.x,n=this.y,s=this.z,r=t.elements;return this.x=r[0]*e+r[4]*n+r[8]*s,this.y=r[1]*e+r[5]*n+r[9]*s,this.z=r[2]*e+r[6]*n+r[10]*s,this.normalize()}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this}divideScalar(t){return this.multiplyScalar(1/t)}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this.z=me(this.z,t.z,e.z),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this.z=me(this.z,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this}cross(t){return this.crossVectors(this,t)}crossVectors(t,e){let n=t.x,s=t.y,r=t.z,o=e.x,a=e.y,c=e.z;return this.x=s*c-r*a,this.y=r*o-n*c,this.z=n*a-s*o,this}projectOnVector(t){let e=t.lengthSq();if(e===0)return this.set(0,0,0);let n=t.dot(this)/e;return this.copy(t).multiplyScalar(n)}projectOnPlane(t){return Xh.copy(this).projectOnVector(t),this.sub(Xh)}reflect(t){return this.sub(Xh.copy(t).multiplyScalar(2*this.dot(t)))}angleTo(t){let e=Math.sqrt(this.lengthSq()*t.lengthSq());if(e===0)return Math.PI/2;let n=this.dot(t)/e;return Math.acos(me(n,-1,1))}distanceTo(t){return Math.sqrt(this.distanceToSquared(t))}distanceToSquared(t){let e=this.x-t.x,n=this.y-t.y,s=this.z-t.z;return e*e+n*n+s*s}manhattanDistanceTo(t){return Math.abs(this.x-t.x)+Math.abs(this.y-t.y)+Math.abs(this.z-t.z)}setFromSpherical(t){return this.setFromSphericalCoords(t.radius,t.phi,t.theta)}setFromSphericalCoords(t,e,n){let s=Math.sin(e)*t;return this.x=s*Math.sin(n),this.y=Math.cos(e)*t,this.z=s*Math.cos(n),this}setFromCylindrical(t){return this.setFromCylindricalCoords(t.radius,t.theta,t.y)}setFromCylindricalCoords(t,e,n){return this.x=t*Math.sin(e),this.y=n,this.z=t*Math.cos(e),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this}setFromMatrixScale(t){let e=this.setFromMatrixColumn(t,0).length(),n=this.setFromMatrixColumn(t,1).length(),s=this.setFromMatrixColumn(t,2).length();return this.x=e,this.y=n,this.z=s,this}setFromMatrixColumn(t,e){return this.fromArray(t.elements,e*4)}setFromMatrix3Column(t,e){return this.fromArray(t.elements,e*3)}setFromEuler(t){return this.x=t._x,this.y=t._y,this.z=t._z,this}setFromColor(t){return this.x=t.r,this.y=t.g,this.z=t.b,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this}randomDirection(){let t=Math.random()*Math.PI*2,e=Math.random()*2-1,n=Math.sqrt(1-e*e);return this.x=n*Math.cos(t),this.y=e,this.z=n*Math.sin(t),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z}},Xh=new W,Tp=new li,se=class{static{this.prototype.isMatrix3=!0}constructor(t,e,n,s,r,o,a,c,l){this.elements=[1,0,0,0,1,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,c,l)}set(t,e,n,s,r,o,a,c,l){let u=this.elements;return u[0]=t,u[1]=s,u[2]=a,u[3]=e,u[4]=r,u[5]=c,u[6]=n,u[7]=o,u[8]=l,this}identity(){return this.set(1,0,0,0,1,0,0,0,1),this}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],this}extractBasis(t,e,n){return t.setFromMatrix3Column(this,0),e.setFromMatrix3Column(this,1),n.setFromMatrix3Column(this,2),this}setFromMatrix4(t){let e=t.elements;return this.set(e[0],e[4],e[8],e[1],e[5],e[9],e[2],e[6],e[10]),this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[3],c=n[6],l=n[1],u=n[4],h=n[7],d=n[2],f=n[5],g=n[8],v=s[0],p=s[3],m=s[6],y=s[1],A=s[4],M=s[7],R=s[2],E=s[5],_=s[8];return r[0]=o*v+a*y+c*R,r[3]=o*p+a*A+c*E,r[6]=o*m+a*M+c*_,r[1]=l*v+u*y+h*R,r[4]=l*p+u*A+h*E,r[7]=l*m+u*M+h*_,r[2]=d*v+f*y+g*R,r[5]=d*p+f*A+g*E,r[8]=d*m+f*M+g*_,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[3]*=t,e[6]*=t,e[1]*=t,e[4]*=t,e[7]*=t,e[2]*=t,e[5]*=t,e[8]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],c=t[6],l=t[7],u=t[8];return e*o*u-e*a*l-n*r*u+n*a*c+s*r*l-s*o*c}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],c=t[6],l=t[7],u=t[8],h=u*o-a*l,d=a*c-u*r,f=l*r-o*c,g=e*h+n*d+s*f;if(g===0)return this.set(0,0,0,0,0,0,0,0,0);let v=1/g;return t[0]=h*v,t[1]=(s*l-u*n)*v,t[2]=(a*n-s*o)*v,t[3]=d*v,t[4]=(u*e-s*c)*v,t[5]=(s*r-a*e)*v,t[6]=f*v,t[7]=(n*c-l*e)*v,t[8]=(o*e-n*r)*v,this}transpose(){let t,e=this.elements;return t=e[1],e[1]=e[3],e[3]=t,t=e[2],e[2]=e[6],e[6]=t,t=e[5],e[5]=e[7],e[7]=t,this}getNormalMatrix(t){return this.setFromMatrix4(t).invert().transpose()}transposeIntoArray(t){let e=this.elements;return t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8],this}setUvTransform(t,e,n,s,r,o,a){let c=Math.cos(r),l=Math.sin(r);return this.set(n*c,n*l,-n*(c*o+l*a)+o+t,-s*l,s*c,-s*(-l*o+c*a)+a+e,0,0,1),this}scale(t,e){return Lo("Matrix3: .scale() is deprecated. Use .makeScale() instead."),this.premultiply(qh.makeScale(t,e)),this}rotate(t){return Lo("Matrix3: .rotate() is deprecated. Use .makeRotation() instead."),this.premultiply(qh.makeRotation(-t)),this}translate(t,e){return Lo("Matrix3: .translate() is deprecated. Use .makeTranslation() instead."),this.premultiply(qh.makeTranslation(t,e)),this}makeTranslation(t,e){return t.isVector2?this.set(1,0,t.x,0,1,t.y,0,0,1):this.set(1,0,t,0,1,e,0,0,1),this}makeRotation(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,n,e,0,0,0,1),this}makeScale(t,e){return this.set(t,0,0,0,e,0,0,0,1),this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<9;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<9;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t}clone(){return new this.constructor().fromArray(this.elements)}},qh=new se,Ap=new se().set(.4123908,.3575843,.1804808,.212639,.7151687,.0721923,.0193308,.1191948,.9505322),Rp=new se().set(3.2409699,-1.5373832,-.4986108,-.9692436,1.8759675,.0415551,.0556301,-.203977,1.0569715);function yx(){let i={enabled:!0,workingColorSpace:Fo,spaces:{},convert:function(s,r,o){return this.enabled===!1||r===o||!r||!o||(this.spaces[r].transfer===Re&&(s.r=os(s.r),s.g=os(s.g),s.b=os(s.b)),this.spaces[r].primaries!==this.spaces[o].primaries&&(s.applyMatrix3(this.spaces[r].toXYZ),s.applyMatrix3(this.spaces[o].fromXYZ)),this.spaces[o].transfer===Re&&(s.r=Wr(s.r),s.g=Wr(s.g),s.b=Wr(s.b))),s},workingToColorSpace:function(s,r){return this.convert(s,this.workingColorSpace,r)},colorSpaceToWorking:function(s,r){return this.convert(s,r,this.workingColorSpace)},getPrimaries:function(s){return this.spaces[s].primaries},getTransfer:function(s){return s===ps?Oo:this.spaces[s].transfer},getToneMappingMode:function(s){return this.spaces[s].outputColorSpaceConfig.toneMappingMode||"standard"},getLuminanceCoefficients:function(s,r=this.workingColorSpace){return s.fromArray(this.spaces[r].luminanceCoefficients)},define:function(s){Object.assign(this.spaces,s)},_getMatrix:function(s,r,o){return s.copy(this.spaces[o].fromXYZ).multiply(this.spaces[r].toXYZ)},_getDrawingBufferColorSpace:function(s){return this.spaces[s].outputColorSpaceConfig.drawingBufferColorSpace},_getUnpackColorSpace:function(s=this.workingColorSpace){return this.spaces[s].workingColorSpaceConfig.unpackColorSpace}},t=[.64,.33,.3,.6,.15,.06],e=[.2126,.7152,.0722],n=[.3127,.329];return i.define({[Fo]:{primaries:t,whitePoint:n,transfer:Oo,toXYZ:Ap,fromXYZ:Rp,luminanceCoefficients:e,workingColorSpaceConfig:{unpackColorSpace:ai},outputColorSpaceConfig:{drawingBufferColorSpace:ai}},[ai]:{primaries:t,whitePoint:n,transfer:Re,toXYZ:Ap,fromXYZ:Rp,luminanceCoefficients:e,outputColorSpaceConfig:{drawingBufferColorSpace:ai}}}),i}var ye=yx();function os(i){return i<.04045?i*.0773993808:Math.pow(i*.9478672986+.0521327014,2.4)}function Wr(i){return i<.0031308?i*12.92:1.055*Math.pow(i,.41666)-.055}var Ir,Al=class{static getDataURL(t,e="image/png"){if(/^data:/i.test(t.src)||typeof HTMLCanvasElement>"u")return t.src;let n;if(t instanceof HTMLCanvasElement)n=t;else{Ir===void 0&&(Ir=Bo("canvas")),Ir.width=t.width,Ir.height=t.height;let s=Ir.getContext("2d");t instanceof ImageData?s.putImageData(t,0,0):s.drawImage(t,0,0,t.width,t.height),n=Ir}return n.toDataURL(e)}static sRGBToLinear(t){if(typeof HTMLImageElement<"u"&&t instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&t instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&t instanceof ImageBitmap){let e=Bo("canvas");e.width=t.width,e.height=t.height;let n=e.getContext("2d");n.drawImage(t,0,0,t.width,t.height);let s=n.getImageData(0,0,t.width,t.height),r=s.data;for(let o=0;o<r.length;o++)r[o]=os(r[o]/255)*255;return n.putImageData(s,0,0),e}else if(t.data){let e=t.data.slice(0);for(let n=0;n<e.length;n++)e instanceof Uint8Array||e instanceof Uint8ClampedArray?e[n]=Math.floor(os(e[n]/255)*255):e[n]=os(e[n]);return{data:e,width:t.width,height:t.height}}else return Zt("ImageUtils.sRGBToLinear(): Unsupported image type. No color space conversion applied."),t}},vx=0,Zr=class{constructor(t=null){this.isTextureSource=!0,Object.defineProperty(this,"id",{value:vx++}),this.uuid=ro(),this.data=t,this.dataReady=!0,this.version=0}getSize(t){let e=this.data;return typeof HTMLVideoElement<"u"&&e instanceof HTMLVideoElement?t.set(e.videoWidth,e.videoHeight,0):typeof VideoFrame<"u"&&e instanceof VideoFrame?t.set(e.displayWidth,e.displayHeight,0):e!==null?t.set(e.width||0,e.height||0,e.depth||0):t.set(0,0,0),t}set needsUpdate(t){t===!0&&this.version++}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.images[this.uuid]!==void 0)return t.images[this.uuid];let n={uuid:this.uuid,url:""},s=this.data;if(s!==null){let r;if(Array.isArray(s)){r=[];for(let o=0,a=s.length;o<a;o++)s[o].isDataTexture?r.push(Yh(s[o].image)):r.push(Yh(s[o]))}else r=Yh(s);n.url=r}return e||(t.images[this.uuid]=n),n}};function Yh(i){return typeof HTMLImageElement<"u"&&i instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&i instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&i instanceof ImageBitmap?Al.getDataURL(i):i.data?{data:Array.from(i.data),width:i.width,height:i.height,type:i.data.constructor.name}:(Zt("Texture: Unable to serialize Texture."),{})}var Mx=0,$h=new W,Zn=class i extends Ai{constructor(t=i.DEFAULT_IMAGE,e=i.DEFAULT_MAPPING,n=Hi,s=Hi,r=Yn,o=ds,a=Li,c=Jn,l=i.DEFAULT_ANISOTROPY,u=ps){super(),this.isTexture=!0,Object.defineProperty(this,"id",{value:Mx++}),this.uuid=ro(),this.name="",this.source=new Zr(t),this.mipmaps=[],this.mapping=e,this.channel=0,this.wrapS=n,this.wrapT=s,this.magFilter=r,this.minFilter=o,this.anisotropy=l,this.format=a,this.internalFormat=null,this.type=c,this.offset=new ie(0,0),this.repeat=new ie(1,1),this.center=new ie(0,0),this.rotation=0,this.matrixAutoUpdate=!0,this.matrix=new se,this.generateMipmaps=!0,this.mipmapsAutoUpdate=!0,this.premultiplyAlpha=!1,this.flipY=!0,this.unpackAlignment=4,this.colorSpace=u,this.userData={},this.updateRanges=[],this.version=0,this.onUpdate=null,this.renderTarget=null,this.isRenderTargetTexture=!1,this.isArrayTexture=!!(t&&t.depth&&t.depth>1),this.pmremVersion=0,this.isPMREMTexture=!1,this.normalized=!1}get width(){return this.source.getSize($h).x}get height(){return this.source.getSize($h).y}get depth(){return this.source.getSize($h).z}get image(){return this.source.data}set image(t){this.source.data=t}updateMatrix(){this.matrix.setUvTransform(this.offset.x,this.offset.y,this.repeat.x,this.repeat.y,this.rotation,this.center.x,this.center.y)}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}clone(){return new this.constructor().copy(this)}copy(t){return this.name=t.name,this.source=t.source,this.mipmaps=t.mipmaps.slice(0),this.mapping=t.mapping,this.channel=t.channel,this.wrapS=t.wrapS,this.wrapT=t.wrapT,this.magFilter=t.magFilter,this.minFilter=t.minFilter,this.anisotropy=t.anisotropy,this.format=t.format,this.internalFormat=t.internalFormat,this.type=t.type,this.normalized=t.normalized,this.offset.copy(t.offset),this.repeat.copy(t.repeat),this.center.copy(t.center),this.rotation=t.rotation,this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrix.copy(t.matrix),this.generateMipmaps=t.generateMipmaps,this.mipmapsAutoUpdate=t.mipmapsAutoUpdate,this.premultiplyAlpha=t.premultiplyAlpha,this.flipY=t.flipY,this.unpackAlignment=t.unpackAlignment,this.colorSpace=t.colorSpace,this.renderTarget=t.renderTarget,this.isRenderTargetTexture=t.isRenderTargetTexture,this.isPMREMTexture=t.isPMREMTexture,this.isArrayTexture=t.isArrayTexture,this.userData=JSON.parse(JSON.stringify(t.userData)),this.needsUpdate=!0,this}setValues(t){for(let e in t){let n=t[e];if(n===void 0){Zt(`Texture.setValues(): parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Zt(`Texture.setValues(): property '${e}' does not exist.`);continue}s&&n&&s.isVector2&&n.isVector2||s&&n&&s.isVector3&&n.isVector3||s&&n&&s.isMatrix3&&n.isMatrix3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";if(!e&&t.textures[this.uuid]!==void 0)return t.textures[this.uuid];let n={metadata:{version:4.7,type:"Texture",generator:"Texture.toJSON"},uuid:this.uuid,name:this.name,image:this.source.toJSON(t).uuid,mapping:this.mapping,channel:this.channel,repeat:[this.repeat.x,this.repeat.y],offset:[this.offset.x,this.offset.y],center:[this.center.x,this.center.y],rotation:this.rotation,wrap:[this.wrapS,this.wrapT],format:this.format,internalFormat:this.internalFormat,type:this.type,normalized:this.normalized,colorSpace:this.colorSpace,minFilter:this.minFilter,magFilter:this.magFilter,anisotropy:this.anisotropy,flipY:this.flipY,generateMipmaps:this.generateMipmaps,mipmapsAutoUpdate:this.mipmapsAutoUpdate,premultiplyAlpha:this.premultiplyAlpha,unpackAlignment:this.unpackAlignment};return Object.keys(this.userData).length>0&&(n.userData=this.userData),e||(t.textures[this.uuid]=n),n}dispose(){this.dispatchEvent({type:"dispose"})}transformUv(t){if(this.mapping!==Lu)return t;if(t.applyMatrix3(this.matrix),t.x<0||t.x>1)switch(this.wrapS){case wl:t.x=t.x-Math.floor(t.x);break;case Hi:t.x=t.x<0?0:1;break;case El:Math.abs(Math.floor(t.x)%2)===1?t.x=Math.ceil(t.x)-t.x:t.x=t.x-Math.floor(t.x);break}if(t.y<0||t.y>1)switch(this.wrapT){case wl:t.y=t.y-Math.floor(t.y);break;case Hi:t.y=t.y<0?0:1;break;case El:Math.abs(Math.floor(t.y)%2)===1?t.y=Math.ceil(t.y)-t.y:t.y=t.y-Math.floor(t.y);break}return this.flipY&&(t.y=1-t.y),t}set needsUpdate(t){t===!0&&(this.version++,this.source.needsUpdate=!0)}set needsPMREMUpdate(t){t===!0&&this.pmremVersion++}};Zn.DEFAULT_IMAGE=null;Zn.DEFAULT_MAPPING=Lu;Zn.DEFAULT_ANISOTROPY=1;var $e=class{static{this.prototype.isVector4=!0}constructor(t=0,e=0,n=0,s=1){this.x=t,this.y=e,this.z=n,this.w=s}get width(){return this.z}set width(t){this.z=t}get height(){return this.w}set height(t){this.w=t}set(t,e,n,s){return this.x=t,this.y=e,this.z=n,this.w=s,this}setScalar(t){return this.x=t,this.y=t,this.z=t,this.w=t,this}setX(t){return this.x=t,this}setY(t){return this.y=t,this}setZ(t){return this.z=t,this}setW(t){return this.w=t,this}setComponent(t,e){switch(t){case 0:this.x=e;break;case 1:this.y=e;break;case 2:this.z=e;break;case 3:this.w=e;break;default:throw new Error("THREE.Vector4: index is out of range: "+t)}return this}getComponent(t){switch(t){case 0:return this.x;case 1:return this.y;case 2:return this.z;case 3:return this.w;default:throw new Error("THREE.Vector4: index is out of range: "+t)}}clone(){return new this.constructor(this.x,this.y,this.z,this.w)}copy(t){return this.x=t.x,this.y=t.y,this.z=t.z,this.w=t.w!==void 0?t.w:1,this}add(t){return this.x+=t.x,this.y+=t.y,this.z+=t.z,this.w+=t.w,this}addScalar(t){return this.x+=t,this.y+=t,this.z+=t,this.w+=t,this}addVectors(t,e){return this.x=t.x+e.x,this.y=t.y+e.y,this.z=t.z+e.z,this.w=t.w+e.w,this}addScaledVector(t,e){return this.x+=t.x*e,this.y+=t.y*e,this.z+=t.z*e,this.w+=t.w*e,this}sub(t){return this.x-=t.x,this.y-=t.y,this.z-=t.z,this.w-=t.w,this}subScalar(t){return this.x-=t,this.y-=t,this.z-=t,this.w-=t,this}subVectors(t,e){return this.x=t.x-e.x,this.y=t.y-e.y,this.z=t.z-e.z,this.w=t.w-e.w,this}multiply(t){return this.x*=t.x,this.y*=t.y,this.z*=t.z,this.w*=t.w,this}multiplyScalar(t){return this.x*=t,this.y*=t,this.z*=t,this.w*=t,this}applyMatrix4(t){let e=this.x,n=this.y,s=this.z,r=this.w,o=t.elements;return this.x=o[0]*e+o[4]*n+o[8]*s+o[12]*r,this.y=o[1]*e+o[5]*n+o[9]*s+o[13]*r,this.z=o[2]*e+o[6]*n+o[10]*s+o[14]*r,this.w=o[3]*e+o[7]*n+o[11]*s+o[15]*r,this}divide(t){return this.x/=t.x,this.y/=t.y,this.z/=t.z,this.w/=t.w,this}divideScalar(t){return this.multiplyScalar(1/t)}setAxisAngleFromQuaternion(t){this.w=2*Math.acos(t.w);let e=Math.sqrt(1-t.w*t.w);return e<1e-4?(this.x=1,this.y=0,this.z=0):(this.x=t.x/e,this.y=t.y/e,this.z=t.z/e),this}setAxisAngleFromRotationMatrix(t){let e,n,s,r,c=t.elements,l=c[0],u=c[4],h=c[8],d=c[1],f=c[5],g=c[9],v=c[2],p=c[6],m=c[10];if(Math.abs(u-d)<.01&&Math.abs(h-v)<.01&&Math.abs(g-p)<.01){if(Math.abs(u+d)<.1&&Math.abs(h+v)<.1&&Math.abs(g+p)<.1&&Math.abs(l+f+m-3)<.1)return this.set(1,0,0,0),this;e=Math.PI;let A=(l+1)/2,M=(f+1)/2,R=(m+1)/2,E=(u+d)/4,_=(h+v)/4,T=(g+p)/4;return A>M&&A>R?A<.01?(n=0,s=.707106781,r=.707106781):(n=Math.sqrt(A),s=E/n,r=_/n):M>R?M<.01?(n=.707106781,s=0,r=.707106781):(s=Math.sqrt(M),n=E/s,r=T/s):R<.01?(n=.707106781,s=.707106781,r=0):(r=Math.sqrt(R),n=_/r,s=T/r),this.set(n,s,r,e),this}let y=Math.sqrt((p-g)*(p-g)+(h-v)*(h-v)+(d-u)*(d-u));return Math.abs(y)<.001&&(y=1),this.x=(p-g)/y,this.y=(h-v)/y,this.z=(d-u)/y,this.w=Math.acos((l+f+m-1)/2),this}setFromMatrixPosition(t){let e=t.elements;return this.x=e[12],this.y=e[13],this.z=e[14],this.w=e[15],this}min(t){return this.x=Math.min(this.x,t.x),this.y=Math.min(this.y,t.y),this.z=Math.min(this.z,t.z),this.w=Math.min(this.w,t.w),this}max(t){return this.x=Math.max(this.x,t.x),this.y=Math.max(this.y,t.y),this.z=Math.max(this.z,t.z),this.w=Math.max(this.w,t.w),this}clamp(t,e){return this.x=me(this.x,t.x,e.x),this.y=me(this.y,t.y,e.y),this.z=me(this.z,t.z,e.z),this.w=me(this.w,t.w,e.w),this}clampScalar(t,e){return this.x=me(this.x,t,e),this.y=me(this.y,t,e),this.z=me(this.z,t,e),this.w=me(this.w,t,e),this}clampLength(t,e){let n=this.length();return this.divideScalar(n||1).multiplyScalar(me(n,t,e))}floor(){return this.x=Math.floor(this.x),this.y=Math.floor(this.y),this.z=Math.floor(this.z),this.w=Math.floor(this.w),this}ceil(){return this.x=Math.ceil(this.x),this.y=Math.ceil(this.y),this.z=Math.ceil(this.z),this.w=Math.ceil(this.w),this}round(){return this.x=Math.round(this.x),this.y=Math.round(this.y),this.z=Math.round(this.z),this.w=Math.round(this.w),this}roundToZero(){return this.x=Math.trunc(this.x),this.y=Math.trunc(this.y),this.z=Math.trunc(this.z),this.w=Math.trunc(this.w),this}negate(){return this.x=-this.x,this.y=-this.y,this.z=-this.z,this.w=-this.w,this}dot(t){return this.x*t.x+this.y*t.y+this.z*t.z+this.w*t.w}lengthSq(){return this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w}length(){return Math.sqrt(this.x*this.x+this.y*this.y+this.z*this.z+this.w*this.w)}manhattanLength(){return Math.abs(this.x)+Math.abs(this.y)+Math.abs(this.z)+Math.abs(this.w)}normalize(){return this.divideScalar(this.length()||1)}setLength(t){return this.normalize().multiplyScalar(t)}lerp(t,e){return this.x+=(t.x-this.x)*e,this.y+=(t.y-this.y)*e,this.z+=(t.z-this.z)*e,this.w+=(t.w-this.w)*e,this}lerpVectors(t,e,n){return this.x=t.x+(e.x-t.x)*n,this.y=t.y+(e.y-t.y)*n,this.z=t.z+(e.z-t.z)*n,this.w=t.w+(e.w-t.w)*n,this}equals(t){return t.x===this.x&&t.y===this.y&&t.z===this.z&&t.w===this.w}fromArray(t,e=0){return this.x=t[e],this.y=t[e+1],this.z=t[e+2],this.w=t[e+3],this}toArray(t=[],e=0){return t[e]=this.x,t[e+1]=this.y,t[e+2]=this.z,t[e+3]=this.w,t}fromBufferAttribute(t,e){return this.x=t.getX(e),this.y=t.getY(e),this.z=t.getZ(e),this.w=t.getW(e),this}random(){return this.x=Math.random(),this.y=Math.random(),this.z=Math.random(),this.w=Math.random(),this}*[Symbol.iterator](){yield this.x,yield this.y,yield this.z,yield this.w}},Rl=class extends Ai{constructor(t=1,e=1,n={}){super(),n=Object.assign({generateMipmaps:!1,internalFormat:null,minFilter:Yn,depthBuffer:!0,stencilBuffer:!1,resolveColorBuffer:!0,resolveDepthBuffer:!0,resolveStencilBuffer:!0,storeMultisampledColorBuffer:!0,storeMultisampledDepthBuffer:!0,storeMultisampledStencilBuffer:!0,depthTexture:null,samples:0,count:1,depth:1,multiview:!1,useArrayDepthTexture:!1},n),this.isRenderTarget=!0,this.width=t,this.height=e,this.depth=n.depth,this.scissor=new $e(0,0,t,e),this.scissorTest=!1,this.viewport=new $e(0,0,t,e),this.textures=[];let s=n.count;for(let r=0;r<s;r++)this.textures[r]=new Zn({width:t,height:e,depth:n.depth}),this.textures[r].isRenderTargetTexture=!0,this.textures[r].renderTarget=this;this._setTextureOptions(n),this.depthBuffer=n.depthBuffer,this.stencilBuffer=n.stencilBuffer,this.resolveColorBuffer=n.resolveColorBuffer,this.resolveDepthBuffer=n.resolveDepthBuffer,this.resolveStencilBuffer=n.resolveStencilBuffer,this.storeMultisampledColorBuffer=n.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=n.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=n.storeMultisampledStencilBuffer,this._depthTexture=null,this.depthTexture=n.depthTexture,this.samples=n.samples,this.multiview=n.multiview,this.useArrayDepthTexture=n.useArrayDepthTexture}_setTextureOptions(t={}){let e={minFilter:Yn,generateMipmaps:!1,flipY:!1,internalFormat:null};t.mapping!==void 0&&(e.mapping=t.mapping),t.wrapS!==void 0&&(e.wrapS=t.wrapS),t.wrapT!==void 0&&(e.wrapT=t.wrapT),t.wrapR!==void 0&&(e.wrapR=t.wrapR),t.magFilter!==void 0&&(e.magFilter=t.magFilter),t.minFilter!==void 0&&(e.minFilter=t.minFilter),t.format!==void 0&&(e.format=t.format),t.type!==void 0&&(e.type=t.type),t.anisotropy!==void 0&&(e.anisotropy=t.anisotropy),t.colorSpace!==void 0&&(e.colorSpace=t.colorSpace),t.flipY!==void 0&&(e.flipY=t.flipY),t.generateMipmaps!==void 0&&(e.generateMipmaps=t.generateMipmaps),t.mipmapsAutoUpdate!==void 0&&(e.mipmapsAutoUpdate=t.mipmapsAutoUpdate),t.internalFormat!==void 0&&(e.internalFormat=t.internalFormat);for(let n=0;n<this.textures.length;n++)this.textures[n].setValues(e)}get texture(){return this.textures[0]}set texture(t){this.textures[0]=t}set depthTexture(t){this._depthTexture!==null&&this._depthTexture.renderTarget===this&&(this._depthTexture.renderTarget=null),t!==null&&t.renderTarget===null&&(t.renderTarget=this),this._depthTexture=t}get depthTexture(){return this._depthTexture}setSize(t,e,n=1){if(this.width!==t||this.height!==e||this.depth!==n){this.width=t,this.height=e,this.depth=n;for(let s=0,r=this.textures.length;s<r;s++)this.textures[s].image.width=t,this.textures[s].image.height=e,this.textures[s].image.depth=n,this.textures[s].isData3DTexture!==!0&&(this.textures[s].isArrayTexture=this.textures[s].image.depth>1);this.dispose()}this.viewport.set(0,0,t,e),this.scissor.set(0,0,t,e)}clone(){return new this.constructor().copy(this)}copy(t){this.width=t.width,this.height=t.height,this.depth=t.depth,this.scissor.copy(t.scissor),this.scissorTest=t.scissorTest,this.viewport.copy(t.viewport),this.textures.length=0;for(let e=0,n=t.textures.length;e<n;e++){this.textures[e]=t.textures[e].clone(),this.textures[e].isRenderTargetTexture=!0,this.textures[e].renderTarget=this;let s=Object.assign({},t.textures[e].image);this.textures[e].source=new Zr(s)}if(this.depthBuffer=t.depthBuffer,this.stencilBuffer=t.stencilBuffer,this.resolveColorBuffer=t.resolveColorBuffer,this.resolveDepthBuffer=t.resolveDepthBuffer,this.resolveStencilBuffer=t.resolveStencilBuffer,this.storeMultisampledColorBuffer=t.storeMultisampledColorBuffer,this.storeMultisampledDepthBuffer=t.storeMultisampledDepthBuffer,this.storeMultisampledStencilBuffer=t.storeMultisampledStencilBuffer,t.depthTexture!==null)if(t.depthTexture.renderTarget===t){let e=t.depthTexture.clone();e.renderTarget=null,this.depthTexture=e}else this.depthTexture=t.depthTexture;else this.depthTexture=null;return this.samples=t.samples,this.multiview=t.multiview,this.useArrayDepthTexture=t.useArrayDepthTexture,this}dispose(){this.dispatchEvent({type:"dispose"})}},ci=class extends Rl{constructor(t=1,e=1,n={}){super(t,e,n),this.isWebGLRenderTarget=!0}},ko=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isDataArrayTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=An,this.minFilter=An,this.wrapR=Hi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1,this.layerUpdates=new Set}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}addLayerUpdate(t){this.layerUpdates.add(t)}clearLayerUpdates(){this.layerUpdates.clear()}};var Cl=class extends Zn{constructor(t=null,e=1,n=1,s=1){super(null),this.isData3DTexture=!0,this.image={data:t,width:e,height:n,depth:s},this.magFilter=An,this.minFilter=An,this.wrapR=Hi,this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}copy(t){return super.copy(t),this.wrapR=t.wrapR,this}};var Xe=class i{static{this.prototype.isMatrix4=!0}constructor(t,e,n,s,r,o,a,c,l,u,h,d,f,g,v,p){this.elements=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],t!==void 0&&this.set(t,e,n,s,r,o,a,c,l,u,h,d,f,g,v,p)}set(t,e,n,s,r,o,a,c,l,u,h,d,f,g,v,p){let m=this.elements;return m[0]=t,m[4]=e,m[8]=n,m[12]=s,m[1]=r,m[5]=o,m[9]=a,m[13]=c,m[2]=l,m[6]=u,m[10]=h,m[14]=d,m[3]=f,m[7]=g,m[11]=v,m[15]=p,this}identity(){return this.set(1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1),this}clone(){return new i().fromArray(this.elements)}copy(t){let e=this.elements,n=t.elements;return e[0]=n[0],e[1]=n[1],e[2]=n[2],e[3]=n[3],e[4]=n[4],e[5]=n[5],e[6]=n[6],e[7]=n[7],e[8]=n[8],e[9]=n[9],e[10]=n[10],e[11]=n[11],e[12]=n[12],e[13]=n[13],e[14]=n[14],e[15]=n[15],this}copyPosition(t){let e=this.elements,n=t.elements;return e[12]=n[12],e[13]=n[13],e[14]=n[14],this}setFromMatrix3(t){let e=t.elements;return this.set(e[0],e[3],e[6],0,e[1],e[4],e[7],0,e[2],e[5],e[8],0,0,0,0,1),this}extractBasis(t,e,n){return this.determinantAffine()===0?(t.set(1,0,0),e.set(0,1,0),n.set(0,0,1),this):(t.setFromMatrixColumn(this,0),e.setFromMatrixColumn(this,1),n.setFromMatrixColumn(this,2),this)}makeBasis(t,e,n){return this.set(t.x,e.x,n.x,0,t.y,e.y,n.y,0,t.z,e.z,n.z,0,0,0,0,1),this}extractRotation(t){if(t.determinantAffine()===0)return this.identity();let e=this.elements,n=t.elements,s=1/Lr.setFromMatrixColumn(t,0).length(),r=1/Lr.setFromMatrixColumn(t,1).length(),o=1/Lr.setFromMatrixColumn(t,2).length();return e[0]=n[0]*s,e[1]=n[1]*s,e[2]=n[2]*s,e[3]=0,e[4]=n[4]*r,e[5]=n[5]*r,e[6]=n[6]*r,e[7]=0,e[8]=n[8]*o,e[9]=n[9]*o,e[10]=n[10]*o,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromEuler(t){let e=this.elements,n=t.x,s=t.y,r=t.z,o=Math.cos(n),a=Math.sin(n),c=Math.cos(s),l=Math.sin(s),u=Math.cos(r),h=Math.sin(r);if(t.order==="XYZ"){let d=o*u,f=o*h,g=a*u,v=a*h;e[0]=c*u,e[4]=-c*h,e[8]=l,e[1]=f+g*l,e[5]=d-v*l,e[9]=-a*c,e[2]=v-d*l,e[6]=g+f*l,e[10]=o*c}else if(t.order==="YXZ"){let d=c*u,f=c*h,g=l*u,v=l*h;e[0]=d+v*a,e[4]=g*a-f,e[8]=o*l,e[1]=o*h,e[5]=o*u,e[9]=-a,e[2]=f*a-g,e[6]=v+d*a,e[10]=o*c}else if(t.order==="ZXY"){let d=c*u,f=c*h,g=l*u,v=l*h;e[0]=d-v*a,e[4]=-o*h,e[8]=g+f*a,e[1]=f+g*a,e[5]=o*u,e[9]=v-d*a,e[2]=-o*l,e[6]=a,e[10]=o*c}else if(t.order==="ZYX"){let d=o*u,f=o*h,g=a*u,v=a*h;e[0]=c*u,e[4]=g*l-f,e[8]=d*l+v,e[1]=c*h,e[5]=v*l+d,e[9]=f*l-g,e[2]=-l,e[6]=a*c,e[10]=o*c}else if(t.order==="YZX"){let d=o*c,f=o*l,g=a*c,v=a*l;e[0]=c*u,e[4]=v-d*h,e[8]=g*h+f,e[1]=h,e[5]=o*u,e[9]=-a*u,e[2]=-l*u,e[6]=f*h+g,e[10]=d-v*h}else if(t.order==="XZY"){let d=o*c,f=o*l,g=a*c,v=a*l;e[0]=c*u,e[4]=-h,e[8]=l*u,e[1]=d*h+v,e[5]=o*u,e[9]=f*h-g,e[2]=g*h-f,e[6]=a*u,e[10]=v*h+d}return e[3]=0,e[7]=0,e[11]=0,e[12]=0,e[13]=0,e[14]=0,e[15]=1,this}makeRotationFromQuaternion(t){return this.compose(Sx,t,bx)}lookAt(t,e,n){let s=this.elements;return ri.subVectors(t,e),ri.lengthSq()===0&&(ri.z=1),ri.normalize(),Es.crossVectors(n,ri),Es.lengthSq()===0&&(Math.abs(n.z)===1?ri.x+=1e-4:ri.z+=1e-4,ri.normalize(),Es.crossVectors(n,ri)),Es.normalize(),Ya.crossVectors(ri,Es),s[0]=Es.x,s[4]=Ya.x,s[8]=ri.x,s[1]=Es.y,s[5]=Ya.y,s[9]=ri.y,s[2]=Es.z,s[6]=Ya.z,s[10]=ri.z,this}multiply(t){return this.multiplyMatrices(this,t)}premultiply(t){return this.multiplyMatrices(t,this)}multiplyMatrices(t,e){let n=t.elements,s=e.elements,r=this.elements,o=n[0],a=n[4],c=n[8],l=n[12],u=n[1],h=n[5],d=n[9],f=n[13],g=n[2],v=n[6],p=n[10],m=n[14],y=n[3],A=n[7],M=n[11],R=n[15],E=s[0],_=s[4],T=s[8],O=s[12],N=s[1],I=s[5],V=s[9],G=s[13],D=s[2],H=s[6],Y=s[10],B=s[14],lt=s[3],Z=s[7],K=s[11],tt=s[15];return r[0]=o*E+a*N+c*D+l*lt,r[4]=o*_+a*I+c*H+l*Z,r[8]=o*T+a*V+c*Y+l*K,r[12]=o*O+a*G+c*B+l*tt,r[1]=u*E+h*N+d*D+f*lt,r[5]=u*_+h*I+d*H+f*Z,r[9]=u*T+h*V+d*Y+f*K,r[13]=u*O+h*G+d*B+f*tt,r[2]=g*E+v*N+p*D+m*lt,r[6]=g*_+v*I+p*H+m*Z,r[10]=g*T+v*V+p*Y+m*K,r[14]=g*O+v*G+p*B+m*tt,r[3]=y*E+A*N+M*D+R*lt,r[7]=y*_+A*I+M*H+R*Z,r[11]=y*T+A*V+M*Y+R*K,r[15]=y*O+A*G+M*B+R*tt,this}multiplyScalar(t){let e=this.elements;return e[0]*=t,e[4]*=t,e[8]*=t,e[12]*=t,e[1]*=t,e[5]*=t,e[9]*=t,e[13]*=t,e[2]*=t,e[6]*=t,e[10]*=t,e[14]*=t,e[3]*=t,e[7]*=t,e[11]*=t,e[15]*=t,this}determinant(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[12],o=t[1],a=t[5],c=t[9],l=t[13],u=t[2],h=t[6],d=t[10],f=t[14],g=t[3],v=t[7],p=t[11],m=t[15],y=c*f-l*d,A=a*f-l*h,M=a*d-c*h,R=o*f-l*u,E=o*d-c*u,_=o*h-a*u;return e*(v*y-p*A+m*M)-n*(g*y-p*R+m*E)+s*(g*A-v*R+m*_)-r*(g*M-v*E+p*_)}determinantAffine(){let t=this.elements,e=t[0],n=t[4],s=t[8],r=t[1],o=t[5],a=t[9],c=t[2],l=t[6],u=t[10];return e*(o*u-a*l)-n*(r*u-a*c)+s*(r*l-o*c)}transpose(){let t=this.elements,e;return e=t[1],t[1]=t[4],t[4]=e,e=t[2],t[2]=t[8],t[8]=e,e=t[6],t[6]=t[9],t[9]=e,e=t[3],t[3]=t[12],t[12]=e,e=t[7],t[7]=t[13],t[13]=e,e=t[11],t[11]=t[14],t[14]=e,this}setPosition(t,e,n){let s=this.elements;return t.isVector3?(s[12]=t.x,s[13]=t.y,s[14]=t.z):(s[12]=t,s[13]=e,s[14]=n),this}invert(){let t=this.elements,e=t[0],n=t[1],s=t[2],r=t[3],o=t[4],a=t[5],c=t[6],l=t[7],u=t[8],h=t[9],d=t[10],f=t[11],g=t[12],v=t[13],p=t[14],m=t[15],y=e*a-n*o,A=e*c-s*o,M=e*l-r*o,R=n*c-s*a,E=n*l-r*a,_=s*l-r*c,T=u*v-h*g,O=u*p-d*g,N=u*m-f*g,I=h*p-d*v,V=h*m-f*v,G=d*m-f*p,D=y*G-A*V+M*I+R*N-E*O+_*T;if(D===0)return this.set(0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0);let H=1/D;return t[0]=(a*G-c*V+l*I)*H,t[1]=(s*V-n*G-r*I)*H,t[2]=(v*_-p*E+m*R)*H,t[3]=(d*E-h*_-f*R)*H,t[4]=(c*N-o*G-l*O)*H,t[5]=(e*G-s*N+r*O)*H,t[6]=(p*M-g*_-m*A)*H,t[7]=(u*_-d*M+f*A)*H,t[8]=(o*V-a*N+l*T)*H,t[9]=(n*N-e*V-r*T)*H,t[10]=(g*E-v*M+m*y)*H,t[11]=(h*M-u*E-f*y)*H,t[12]=(a*O-o*I-c*T)*H,t[13]=(e*I-n*O+s*T)*H,t[14]=(v*A-g*R-p*y)*H,t[15]=(u*R-h*A+d*y)*H,this}scale(t){let e=this.elements,n=t.x,s=t.y,r=t.z;return e[0]*=n,e[4]*=s,e[8]*=r,e[1]*=n,e[5]*=s,e[9]*=r,e[2]*=n,e[6]*=s,e[10]*=r,e[3]*=n,e[7]*=s,e[11]*=r,this}getMaxScaleOnAxis(){let t=this.elements,e=t[0]*t[0]+t[1]*t[1]+t[2]*t[2],n=t[4]*t[4]+t[5]*t[5]+t[6]*t[6],s=t[8]*t[8]+t[9]*t[9]+t[10]*t[10];return Math.sqrt(Math.max(e,n,s))}makeTranslation(t,e,n){return t.isVector3?this.set(1,0,0,t.x,0,1,0,t.y,0,0,1,t.z,0,0,0,1):this.set(1,0,0,t,0,1,0,e,0,0,1,n,0,0,0,1),this}makeRotationX(t){let e=Math.cos(t),n=Math.sin(t);return this.set(1,0,0,0,0,e,-n,0,0,n,e,0,0,0,0,1),this}makeRotationY(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,0,n,0,0,1,0,0,-n,0,e,0,0,0,0,1),this}makeRotationZ(t){let e=Math.cos(t),n=Math.sin(t);return this.set(e,-n,0,0,n,e,0,0,0,0,1,0,0,0,0,1),this}makeRotationAxis(t,e){let n=Math.cos(e),s=Math.sin(e),r=1-n,o=t.x,a=t.y,c=t.z,l=r*o,u=r*a;return this.set(l*o+n,l*a-s*c,l*c+s*a,0,l*a+s*c,u*a+n,u*c-s*o,0,l*c-s*a,u*c+s*o,r*c*c+n,0,0,0,0,1),this}makeScale(t,e,n){return this.set(t,0,0,0,0,e,0,0,0,0,n,0,0,0,0,1),this}makeShear(t,e,n,s,r,o){return this.set(1,n,r,0,t,1,o,0,e,s,1,0,0,0,0,1),this}compose(t,e,n){let s=this.elements,r=e._x,o=e._y,a=e._z,c=e._w,l=r+r,u=o+o,h=a+a,d=r*l,f=r*u,g=r*h,v=o*u,p=o*h,m=a*h,y=c*l,A=c*u,M=c*h,R=n.x,E=n.y,_=n.z;return s[0]=(1-(v+m))*R,s[1]=(f+M)*R,s[2]=(g-A)*R,s[3]=0,s[4]=(f-M)*E,s[5]=(1-(d+m))*E,s[6]=(p+y)*E,s[7]=0,s[8]=(g+A)*_,s[9]=(p-y)*_,s[10]=(1-(d+v))*_,s[11]=0,s[12]=t.x,s[13]=t.y,s[14]=t.z,s[15]=1,this}decompose(t,e,n){let s=this.elements;t.x=s[12],t.y=s[13],t.z=s[14];let r=this.determinantAffine();if(r===0)return n.set(1,1,1),e.identity(),this;let o=Lr.set(s[0],s[1],s[2]).length(),a=Lr.set(s[4],s[5],s[6]).length(),c=Lr.set(s[8],s[9],s[10]).length();r<0&&(o=-o),bi.copy(this);let l=1/o,u=1/a,h=1/c;return bi.elements[0]*=l,bi.elements[1]*=l,bi.elements[2]*=l,bi.elements[4]*=u,bi.elements[5]*=u,bi.elements[6]*=u,bi.elements[8]*=h,bi.elements[9]*=h,bi.elements[10]*=h,e.setFromRotationMatrix(bi),n.x=o,n.y=a,n.z=c,this}makePerspective(t,e,n,s,r,o,a=gi,c=!1){let l=this.elements,u=2*r/(e-t),h=2*r/(n-s),d=(e+t)/(e-t),f=(n+s)/(n-s),g,v;if(c)g=r/(o-r),v=o*r/(o-r);else if(a===gi)g=-(o+r)/(o-r),v=-2*o*r/(o-r);else if(a===qr)g=-o/(o-r),v=-o*r/(o-r);else throw new Error("THREE.Matrix4.makePerspective(): Invalid coordinate system: "+a);return l[0]=u,l[4]=0,l[8]=d,l[12]=0,l[1]=0,l[5]=h,l[9]=f,l[13]=0,l[2]=0,l[6]=0,l[10]=g,l[14]=v,l[3]=0,l[7]=0,l[11]=-1,l[15]=0,this}makeOrthographic(t,e,n,s,r,o,a=gi,c=!1){let l=this.elements,u=2/(e-t),h=2/(n-s),d=-(e+t)/(e-t),f=-(n+s)/(n-s),g,v;if(c)g=1/(o-r),v=o/(o-r);else if(a===gi)g=-2/(o-r),v=-(o+r)/(o-r);else if(a===qr)g=-1/(o-r),v=-r/(o-r);else throw new Error("THREE.Matrix4.makeOrthographic(): Invalid coordinate system: "+a);return l[0]=u,l[4]=0,l[8]=0,l[12]=d,l[1]=0,l[5]=h,l[9]=0,l[13]=f,l[2]=0,l[6]=0,l[10]=g,l[14]=v,l[3]=0,l[7]=0,l[11]=0,l[15]=1,this}equals(t){let e=this.elements,n=t.elements;for(let s=0;s<16;s++)if(e[s]!==n[s])return!1;return!0}fromArray(t,e=0){for(let n=0;n<16;n++)this.elements[n]=t[n+e];return this}toArray(t=[],e=0){let n=this.elements;return t[e]=n[0],t[e+1]=n[1],t[e+2]=n[2],t[e+3]=n[3],t[e+4]=n[4],t[e+5]=n[5],t[e+6]=n[6],t[e+7]=n[7],t[e+8]=n[8],t[e+9]=n[9],t[e+10]=n[10],t[e+11]=n[11],t[e+12]=n[12],t[e+13]=n[13],t[e+14]=n[14],t[e+15]=n[15],t}},Lr=new W,bi=new Xe,Sx=new W(0,0,0),bx=new W(1,1,1),Es=new W,Ya=new W,ri=new W,Cp=new Xe,Pp=new li,ls=class i{constructor(t=0,e=0,n=0,s=i.DEFAULT_ORDER){this.isEuler=!0,this._x=t,this._y=e,this._z=n,this._order=s}get x(){return this._x}set x(t){this._x=t,this._onChangeCallback()}get y(){return this._y}set y(t){this._y=t,this._onChangeCallback()}get z(){return this._z}set z(t){this._z=t,this._onChangeCallback()}get order(){return this._order}set order(t){this._order=t,this._onChangeCallback()}set(t,e,n,s=this._order){return this._x=t,this._y=e,this._z=n,this._order=s,this._onChangeCallback(),this}clone(){return new this.constructor(this._x,this._y,this._z,this._order)}copy(t){return this._x=t._x,this._y=t._y,this._z=t._z,this._order=t._order,this._onChangeCallback(),this}setFromRotationMatrix(t,e=this._order,n=!0){let s=t.elements,r=s[0],o=s[4],a=s[8],c=s[1],l=s[5],u=s[9],h=s[2],d=s[6],f=s[10];switch(e){case"XYZ":this._y=Math.asin(me(a,-1,1)),Math.abs(a)<.9999999?(this._x=Math.atan2(-u,f),this._z=Math.atan2(-o,r)):(this._x=Math.atan2(d,l),this._z=0);break;case"YXZ":this._x=Math.asin(-me(u,-1,1)),Math.abs(u)<.9999999?(this._y=Math.atan2(a,f),this._z=Math.atan2(c,l)):(this._y=Math.atan2(-h,r),this._z=0);break;case"ZXY":this._x=Math.asin(me(d,-1,1)),Math.abs(d)<.9999999?(this._y=Math.atan2(-h,f),this._z=Math.atan2(-o,l)):(this._y=0,this._z=Math.atan2(c,r));break;case"ZYX":this._y=Math.asin(-me(h,-1,1)),Math.abs(h)<.9999999?(this._x=Math.atan2(d,f),this._z=Math.atan2(c,r)):(this._x=0,this._z=Math.atan2(-o,l));break;case"YZX":this._z=Math.asin(me(c,-1,1)),Math.abs(c)<.9999999?(this._x=Math.atan2(-u,l),this._y=Math.atan2(-h,r)):(this._x=0,this._y=Math.atan2(a,f));break;case"XZY":this._z=Math.asin(-me(o,-1,1)),Math.abs(o)<.9999999?(this._x=Math.atan2(d,l),this._y=Math.atan2(a,r)):(this._x=Math.atan2(-u,f),this._y=0);break;default:Zt("Euler: .setFromRotationMatrix() encountered an unknown order: "+e)}return this._order=e,n===!0&&this._onChangeCallback(),this}setFromQuaternion(t,e,n){return Cp.makeRotationFromQuaternion(t),this.setFromRotationMatrix(Cp,e,n)}setFromVector3(t,e=this._order){return this.set(t.x,t.y,t.z,e)}reorder(t){return Pp.setFromEuler(this),this.setFromQuaternion(Pp,t)}equals(t){return t._x===this._x&&t._y===this._y&&t._z===this._z&&t._order===this._order}fromArray(t){return this._x=t[0],this._y=t[1],this._z=t[2],t[3]!==void 0&&(this._order=t[3]),this._onChangeCallback(),this}toArray(t=[],e=0){return t[e]=this._x,t[e+1]=this._y,t[e+2]=this._z,t[e+3]=this._order,t}_onChange(t){return this._onChangeCallback=t,this}_onChangeCallback(){}*[Symbol.iterator](){yield this._x,yield this._y,yield this._z,yield this._order}};ls.DEFAULT_ORDER="XYZ";var zo=class{constructor(){this.mask=1}set(t){this.mask=(1<<t|0)>>>0}enable(t){this.mask|=1<<t|0}enableAll(){this.mask=-1}toggle(t){this.mask^=1<<t|0}disable(t){this.mask&=~(1<<t|0)}disableAll(){this.mask=0}test(t){return(this.mask&t.mask)!==0}isEnabled(t){return(this.mask&(1<<t|0))!==0}},wx=0,Ip=new W,Dr=new li,es=new Xe,$a=new W,Ao=new W,Ex=new W,Tx=new li,Lp=new W(1,0,0),Dp=new W(0,1,0),Np=new W(0,0,1),Up={type:"added"},Ax={type:"removed"},Nr={type:"childadded",child:null},Zh={type:"childremoved",child:null},Fn=class i extends Ai{constructor(){super(),this.isObject3D=!0,Object.defineProperty(this,"id",{value:wx++}),this.uuid=ro(),this.name="",this.type="Object3D",this.parent=null,this.children=[],this.up=i.DEFAULT_UP.clone();let t=new W,e=new ls,n=new li,s=new W(1,1,1);function r(){n.setFromEuler(e,!1)}function o(){e.setFromQuaternion(n,void 0,!1)}e._onChange(r),n._onChange(o),Object.defineProperties(this,{position:{configurable:!0,enumerable:!0,value:t},rotation:{configurable:!0,enumerable:!0,value:e},quaternion:{configurable:!0,enumerable:!0,value:n},scale:{configurable:!0,enumerable:!0,value:s},modelViewMatrix:{value:new Xe},normalMatrix:{value:new se}}),this.matrix=new Xe,this.matrixWorld=new Xe,this.matrixAutoUpdate=i.DEFAULT_MATRIX_AUTO_UPDATE,this.matrixWorldAutoUpdate=i.DEFAULT_MATRIX_WORLD_AUTO_UPDATE,this.matrixWorldNeedsUpdate=!1,this.layers=new zo,this.visible=!0,this.castShadow=!1,this.receiveShadow=!1,this.frustumCulled=!0,this.renderOrder=0,this.animations=[],this.customDepthMaterial=void 0,this.customDistanceMaterial=void 0,this.static=!1,this.userData={},this.pivot=null}onBeforeShadow(){}onAfterShadow(){}onBeforeRender(){}onAfterRender(){}applyMatrix4(t){this.matrixAutoUpdate&&this.updateMatrix(),this.matrix.premultiply(t),this.matrix.decompose(this.position,this.quaternion,this.scale),this.pivot!==null&&this.position.copy(this.pivot).applyMatrix4(this.matrix).sub(this.pivot)}applyQuaternion(t){return this.quaternion.premultiply(t),this}setRotationFromAxisAngle(t,e){this.quaternion.setFromAxisAngle(t,e)}setRotationFromEuler(t){this.quaternion.setFromEuler(t,!0)}setRotationFromMatrix(t){this.quaternion.setFromRotationMatrix(t)}setRotationFromQuaternion(t){this.quaternion.copy(t)}rotateOnAxis(t,e){return Dr.setFromAxisAngle(t,e),this.quaternion.multiply(Dr),this}rotateOnWorldAxis(t,e){return Dr.setFromAxisAngle(t,e),this.quaternion.premultiply(Dr),this}rotateX(t){return this.rotateOnAxis(Lp,t)}rotateY(t){return this.rotateOnAxis(Dp,t)}rotateZ(t){return this.rotateOnAxis(Np,t)}translateOnAxis(t,e){return Ip.copy(t).applyQuaternion(this.quaternion),this.position.add(Ip.multiplyScalar(e)),this}translateX(t){return this.translateOnAxis(Lp,t)}translateY(t){return this.translateOnAxis(Dp,t)}translateZ(t){return this.translateOnAxis(Np,t)}localToWorld(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(this.matrixWorld)}worldToLocal(t){return this.updateWorldMatrix(!0,!1),t.applyMatrix4(es.copy(this.matrixWorld).invert())}lookAt(t,e,n){t.isVector3?$a.copy(t):$a.set(t,e,n);let s=this.parent;this.updateWorldMatrix(!0,!1),Ao.setFromMatrixPosition(this.matrixWorld),this.isCamera||this.isLight?es.lookAt(Ao,$a,this.up):es.lookAt($a,Ao,this.up),this.quaternion.setFromRotationMatrix(es),s&&(es.extractRotation(s.matrixWorld),Dr.setFromRotationMatrix(es),this.quaternion.premultiply(Dr.invert()))}add(t){if(arguments.length>1){for(let e=0;e<arguments.length;e++)this.add(arguments[e]);return this}return t===this?(ne("Object3D.add: object can't be added as a child of itself.",t),this):(t&&t.isObject3D?(t.removeFromParent(),t.parent=this,this.children.push(t),t.dispatchEvent(Up),Nr.child=t,this.dispatchEvent(Nr),Nr.child=null):ne("Object3D.add: object not an instance of THREE.Object3D.",t),this)}remove(t){if(arguments.length>1){for(let n=0;n<arguments.length;n++)this.remove(arguments[n]);return this}let e=this.children.indexOf(t);return e!==-1&&(t.parent=null,this.children.splice(e,1),t.dispatchEvent(Ax),Zh.child=t,this.dispatchEvent(Zh),Zh.child=null),this}removeFromParent(){let t=this.parent;return t!==null&&t.remove(this),this}clear(){return this.remove(...this.children)}attach(t){return this.updateWorldMatrix(!0,!1),es.copy(this.matrixWorld).invert(),t.parent!==null&&(t.parent.updateWorldMatrix(!0,!1),es.multiply(t.parent.matrixWorld)),t.applyMatrix4(es),t.removeFromParent(),t.parent=this,this.children.push(t),t.updateWorldMatrix(!1,!0),t.dispatchEvent(Up),Nr.child=t,this.dispatchEvent(Nr),Nr.child=null,this}getObjectById(t){return this.getObjectByProperty("id",t)}getObjectByName(t){return this.getObjectByProperty("name",t)}getObjectByProperty(t,e){if(this[t]===e)return this;for(let n=0,s=this.children.length;n<s;n++){let o=this.children[n].getObjectByProperty(t,e);if(o!==void 0)return o}}getObjectsByProperty(t,e,n=[]){this[t]===e&&n.push(this);let s=this.children;for(let r=0,o=s.length;r<o;r++)s[r].getObjectsByProperty(t,e,n);return n}getWorldPosition(t){return this.updateWorldMatrix(!0,!1),t.setFromMatrixPosition(this.matrixWorld)}getWorldQuaternion(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ao,t,Ex),t}getWorldScale(t){return this.updateWorldMatrix(!0,!1),this.matrixWorld.decompose(Ao,Tx,t),t}getWorldDirection(t){this.updateWorldMatrix(!0,!1);let e=this.matrixWorld.elements;return t.set(e[8],e[9],e[10]).normalize()}raycast(){}intersectsFrustum(){return!0}traverse(t){t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverse(t)}traverseVisible(t){if(this.visible===!1)return;t(this);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].traverseVisible(t)}traverseAncestors(t){let e=this.parent;e!==null&&(t(e),e.traverseAncestors(t))}updateMatrix(){this.matrix.compose(this.position,this.quaternion,this.scale);let t=this.pivot;if(t!==null){let e=t.x,n=t.y,s=t.z,r=this.matrix.elements;r[12]+=e-r[0]*e-r[4]*n-r[8]*s,r[13]+=n-r[1]*e-r[5]*n-r[9]*s,r[14]+=s-r[2]*e-r[6]*n-r[10]*s}this.matrixWorldNeedsUpdate=!0}updateMatrixWorld(t){this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||t)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,t=!0);let e=this.children;for(let n=0,s=e.length;n<s;n++)e[n].updateMatrixWorld(t)}updateWorldMatrix(t,e,n=!1){let s=this.parent;if(t===!0&&s!==null&&s.updateWorldMatrix(!0,!1),this.matrixAutoUpdate&&this.updateMatrix(),(this.matrixWorldNeedsUpdate||n)&&(this.matrixWorldAutoUpdate===!0&&(this.parent===null?this.matrixWorld.copy(this.matrix):this.matrixWorld.multiplyMatrices(this.parent.matrixWorld,this.matrix)),this.matrixWorldNeedsUpdate=!1,n=!0),e===!0){let r=this.children;for(let o=0,a=r.length;o<a;o++)r[o].updateWorldMatrix(!1,!0,n)}}toJSON(t){let e=t===void 0||typeof t=="string",n={};e&&(t={geometries:{},materials:{},textures:{},images:{},shapes:{},skeletons:{},animations:{},nodes:{}},n.metadata={version:4.7,type:"Object",generator:"Object3D.toJSON"});let s={};s.uuid=this.uuid,s.type=this.type,s.name=this.name,s.castShadow=this.castShadow,s.receiveShadow=this.receiveShadow,s.visible=this.visible,s.frustumCulled=this.frustumCulled,s.renderOrder=this.renderOrder,s.static=this.static,s.matrixAutoUpdate=this.matrixAutoUpdate,Object.keys(this.userData).length>0&&(s.userData=this.userData),s.layers=this.layers.mask,s.matrix=this.matrix.toArray(),s.up=this.up.toArray(),this.pivot!==null&&(s.pivot=this.pivot.toArray()),this.morphTargetDictionary!==void 0&&(s.morphTargetDictionary=Object.assign({},this.morphTargetDictionary)),this.morphTargetInfluences!==void 0&&(s.morphTargetInfluences=this.morphTargetInfluences.slice()),this.isInstancedMesh&&(s.type="InstancedMesh",s.count=this.count,s.instanceMatrix=this.instanceMatrix.toJSON(),this.instanceColor!==null&&(s.instanceColor=this.instanceColor.toJSON())),this.isBatchedMesh&&(s.type="BatchedMesh",s.perObjectFrustumCulled=this.perObjectFrustumCulled,s.sortObjects=this.sortObjects,s.drawRanges=this._drawRanges,s.reservedRanges=this._reservedRanges,s.geometryInfo=this._geometryInfo.map(a=>({...a,boundingBox:a.boundingBox?a.boundingBox.toJSON():void 0,boundingSphere:a.boundingSphere?a.boundingSphere.toJSON():void 0})),s.instanceInfo=this._instanceInfo.map(a=>({...a})),s.availableInstanceIds=this._availableInstanceIds.slice(),s.availableGeometryIds=this._availableGeometryIds.slice(),s.nextIndexStart=this._nextIndexStart,s.nextVertexStart=this._nextVertexStart,s.geometryCount=this._geometryCount,s.maxInstanceCount=this._maxInstanceCount,s.maxVertexCount=this._maxVertexCount,s.maxIndexCount=this._maxIndexCount,s.geometryInitialized=this._geometryInitialized,s.matricesTexture=this._matricesTexture.toJSON(t),s.indirectTexture=this._indirectTexture.toJSON(t),this._colorsTexture!==null&&(s.colorsTexture=this._colorsTexture.toJSON(t)),this.boundingSphere!==null&&(s.boundingSphere=this.boundingSphere.toJSON()),this.boundingBox!==null&&(s.boundingBox=this.boundingBox.toJSON()));function r(a,c){return a[c.uuid]===void 0&&(a[c.uuid]=c.toJSON(t)),c.uuid}if(this.isScene)this.background&&(this.background.isColor?s.background=this.background.toJSON():this.background.isTexture&&(s.background=this.background.toJSON(t).uuid)),this.environment&&this.environment.isTexture&&this.environment.isRenderTargetTexture!==!0&&(s.environment=this.environment.toJSON(t).uuid);else if(this.isMesh||this.isLine||this.isPoints){s.geometry=r(t.geometries,this.geometry);let a=this.geometry.parameters;if(a!==void 0&&a.shapes!==void 0){let c=a.shapes;if(Array.isArray(c))for(let l=0,u=c.length;l<u;l++){let h=c[l];r(t.shapes,h)}else r(t.shapes,c)}}if(this.isSkinnedMesh&&(s.bindMode=this.bindMode,s.bindMatrix=this.bindMatrix.toArray(),this.skeleton!==void 0&&(r(t.skeletons,this.skeleton),s.skeleton=this.skeleton.uuid)),this.material!==void 0)if(Array.isArray(this.material)){let a=[];for(let c=0,l=this.material.length;c<l;c++)a.push(r(t.materials,this.material[c]));s.material=a}else s.material=r(t.materials,this.material);if(this.children.length>0){s.children=[];for(let a=0;a<this.children.length;a++)s.children.push(this.children[a].toJSON(t).object)}if(this.animations.length>0){s.animations=[];for(let a=0;a<this.animations.length;a++){let c=this.animations[a];s.animations.push(r(t.animations,c))}}if(e){let a=o(t.geometries),c=o(t.materials),l=o(t.textures),u=o(t.images),h=o(t.shapes),d=o(t.skeletons),f=o(t.animations),g=o(t.nodes);a.length>0&&(n.geometries=a),c.length>0&&(n.materials=c),l.length>0&&(n.textures=l),u.length>0&&(n.images=u),h.length>0&&(n.shapes=h),d.length>0&&(n.skeletons=d),f.length>0&&(n.animations=f),g.length>0&&(n.nodes=g)}return n.object=s,n;function o(a){let c=[];for(let l in a){let u=a[l];delete u.metadata,c.push(u)}return c}}clone(t){return new this.constructor().copy(this,t)}copy(t,e=!0){if(this.name=t.name,this.up.copy(t.up),this.position.copy(t.position),this.rotation.order=t.rotation.order,this.quaternion.copy(t.quaternion),this.scale.copy(t.scale),this.pivot=t.pivot!==null?t.pivot.clone():null,this.matrix.copy(t.matrix),this.matrixWorld.copy(t.matrixWorld),this.matrixAutoUpdate=t.matrixAutoUpdate,this.matrixWorldAutoUpdate=t.matrixWorldAutoUpdate,this.matrixWorldNeedsUpdate=t.matrixWorldNeedsUpdate,this.layers.mask=t.layers.mask,this.visible=t.visible,this.castShadow=t.castShadow,this.receiveShadow=t.receiveShadow,this.frustumCulled=t.frustumCulled,this.renderOrder=t.renderOrder,this.static=t.static,this.animations=t.animations.slice(),this.userData=JSON.parse(JSON.stringify(t.userData)),e===!0)for(let n=0;n<t.children.length;n++){let s=t.children[n];this.add(s.clone())}return this}dispose(){this.dispatchEvent({type:"dispose"})}};Fn.DEFAULT_UP=new W(0,1,0);Fn.DEFAULT_MATRIX_AUTO_UPDATE=!0;Fn.DEFAULT_MATRIX_WORLD_AUTO_UPDATE=!0;var Ti=class extends Fn{constructor(){super(),this.isGroup=!0,this.type="Group"}},Rx={type:"move"},Jr=class{constructor(){this._targetRay=null,this._grip=null,this._hand=null}getHandSpace(){return this._hand===null&&(this._hand=new Ti,this._hand.matrixAutoUpdate=!1,this._hand.visible=!1,this._hand.joints={},this._hand.inputState={pinching:!1}),this._hand}getTargetRaySpace(){return this._targetRay===null&&(this._targetRay=new Ti,this._targetRay.matrixAutoUpdate=!1,this._targetRay.visible=!1,this._targetRay.hasLinearVelocity=!1,this._targetRay.linearVelocity=new W,this._targetRay.hasAngularVelocity=!1,this._targetRay.angularVelocity=new W),this._targetRay}getGripSpace(){return this._grip===null&&(this._grip=new Ti,this._grip.matrixAutoUpdate=!1,this._grip.visible=!1,this._grip.hasLinearVelocity=!1,this._grip.linearVelocity=new W,this._grip.hasAngularVelocity=!1,this._grip.angularVelocity=new W,this._grip.eventsEnabled=!1),this._grip}dispatchEvent(t){return this._targetRay!==null&&this._targetRay.dispatchEvent(t),this._grip!==null&&this._grip.dispatchEvent(t),this._hand!==null&&this._hand.dispatchEvent(t),this}connect(t){if(t&&t.hand){let e=this._hand;if(e)for(let n of t.hand.values())this._getHandJoint(e,n)}return this.dispatchEvent({type:"connected",data:t}),this}disconnect(t){return this.dispatchEvent({type:"disconnected",data:t}),this._targetRay!==null&&(this._targetRay.visible=!1),this._grip!==null&&(this._grip.visible=!1),this._hand!==null&&(this._hand.visible=!1),this}update(t,e,n){let s=null,r=null,o=null,a=this._targetRay,c=this._grip,l=this._hand;if(t&&e.session.visibilityState!=="visible-blurred"){if(l&&t.hand){o=!0;for(let v of t.hand.values()){let p=e.getJointPose(v,n),m=this._getHandJoint(l,v);p!==null&&(m.matrix.fromArray(p.transform.matrix),m.matrix.decompose(m.position,m.quaternion,m.scale),m.matrixWorldNeedsUpdate=!0,m.jointRadius=p.radius),m.visible=p!==null}let u=l.joints["index-finger-tip"],h=l.joints["thumb-tip"],d=u.position.distanceTo(h.position),f=.02,g=.005;l.inputState.pinching&&d>f+g?(l.inputState.pinching=!1,this.dispatchEvent({type:"pinchend",handedness:t.handedness,target:this})):!l.inputState.pinching&&d<=f-g&&(l.inputState.pinching=!0,this.dispatchEvent({type:"pinchstart",handedness:t.handedness,target:this}))}else c!==null&&t.gripSpace&&(r=e.getPose(t.gripSpace,n),r!==null&&(c.matrix.fromArray(r.transform.matrix),c.matrix.decompose(c.position,c.quaternion,c.scale),c.matrixWorldNeedsUpdate=!0,r.linearVelocity?(c.hasLinearVelocity=!0,c.linearVelocity.copy(r.linearVelocity)):c.hasLinearVelocity=!1,r.angularVelocity?(c.hasAngularVelocity=!0,c.angularVelocity.copy(r.angularVelocity)):c.hasAngularVelocity=!1,c.eventsEnabled&&c.dispatchEvent({type:"gripUpdated",data:t,target:this})));a!==null&&(s=e.getPose(t.targetRaySpace,n),s===null&&r!==null&&(s=r),s!==null&&(a.matrix.fromArray(s.transform.matrix),a.matrix.decompose(a.position,a.quaternion,a.scale),a.matrixWorldNeedsUpdate=!0,s.linearVelocity?(a.hasLinearVelocity=!0,a.linearVelocity.copy(s.linearVelocity)):a.hasLinearVelocity=!1,s.angularVelocity?(a.hasAngularVelocity=!0,a.angularVelocity.copy(s.angularVelocity)):a.hasAngularVelocity=!1,this.dispatchEvent(Rx)))}return a!==null&&(a.visible=s!==null),c!==null&&(c.visible=r!==null),l!==null&&(l.visible=o!==null),this}_getHandJoint(t,e){if(t.joints[e.jointName]===void 0){let n=new Ti;n.matrixAutoUpdate=!1,n.visible=!1,t.joints[e.jointName]=n,t.add(n)}return t.joints[e.jointName]}},Om={aliceblue:15792383,antiquewhite:16444375,aqua:65535,aquamarine:8388564,azure:15794175,beige:16119260,bisque:16770244,black:0,blanchedalmond:16772045,blue:255,blueviolet:9055202,brown:10824234,burlywood:14596231,cadetblue:6266528,chartreuse:8388352,chocolate:13789470,coral:16744272,cornflowerblue:6591981,cornsilk:16775388,crimson:14423100,cyan:65535,darkblue:139,darkcyan:35723,darkgoldenrod:12092939,darkgray:11119017,darkgreen:25600,darkgrey:11119017,darkkhaki:12433259,darkmagenta:9109643,darkolivegreen:5597999,darkorange:16747520,darkorchid:10040012,darkred:9109504,darksalmon:15308410,darkseagreen:9419919,darkslateblue:4734347,darkslategray:3100495,darkslategrey:3100495,darkturquoise:52945,darkviolet:9699539,deeppink:16716947,deepskyblue:49151,dimgray:6908265,dimgrey:6908265,dodgerblue:2003199,firebrick:11674146,floralwhite:16775920,forestgreen:2263842,fuchsia:16711935,gainsboro:14474460,ghostwhite:16316671,gold:16766720,goldenrod:14329120,gray:8421504,green:32768,greenyellow:11403055,grey:8421504,honeydew:15794160,hotpink:16738740,indianred:13458524,indigo:4915330,ivory:16777200,khaki:15787660,lavender:15132410,lavenderblush:16773365,lawngreen:8190976,lemonchiffon:16775885,lightblue:11393254,lightcoral:15761536,lightcyan:14745599,lightgoldenrodyellow:16448210,lightgray:13882323,lightgreen:9498256,lightgrey:13882323,lightpink:16758465,lightsalmon:16752762,lightseagreen:2142890,lightskyblue:8900346,lightslategray:7833753,lightslategrey:7833753,lightsteelblue:11584734,lightyellow:16777184,lime:65280,limegreen:3329330,linen:16445670,magenta:16711935,maroon:8388608,mediumaquamarine:6737322,mediumblue:205,mediumorchid:12211667,mediumpurple:9662683,mediumseagreen:3978097,mediumslateblue:8087790,mediumspringgreen:64154,mediumturquoise:4772300,mediumvioletred:13047173,midnightblue:1644912,mintcream:16121850,mistyrose:16770273,moccasin:16770229,navajowhite:16768685,navy:128,oldlace:16643558,olive:8421376,olivedrab:7048739,orange:16753920,orangered:16729344,orchid:14315734,palegoldenrod:15657130,palegreen:10025880,paleturquoise:11529966,palevioletred:14381203,papayawhip:16773077,peachpuff:16767673,peru:13468991,pink:16761035,plum:14524637,powderblue:11591910,purple:8388736,rebeccapurple:6697881,red:16711680,rosybrown:12357519,royalblue:4286945,saddlebrown:9127187,salmon:16416882,sandybrown:16032864,seagreen:3050327,seashell:16774638,sienna:10506797,silver:12632256,skyblue:8900331,slateblue:6970061,slategray:7372944,slategrey:7372944,snow:16775930,springgreen:65407,steelblue:4620980,tan:13808780,teal:32896,thistle:14204888,tomato:16737095,turquoise:4251856,violet:15631086,wheat:16113331,white:16777215,whitesmoke:16119285,yellow:16776960,yellowgreen:10145074},Ts={h:0,s:0,l:0},Za={h:0,s:0,l:0};function Jh(i,t,e){return e<0&&(e+=1),e>1&&(e-=1),e<1/6?i+(t-i)*6*e:e<1/2?t:e<2/3?i+(t-i)*6*(2/3-e):i}var ae=class{constructor(t,e,n){return this.isColor=!0,this.r=1,this.g=1,this.b=1,this.set(t,e,n)}set(t,e,n){if(e===void 0&&n===void 0){let s=t;s&&s.isColor?this.copy(s):typeof s=="number"?this.setHex(s):typeof s=="string"&&this.setStyle(s)}else this.setRGB(t,e,n);return this}setScalar(t){return this.r=t,this.g=t,this.b=t,this}setHex(t,e=ai){return t=Math.floor(t),this.r=(t>>16&255)/255,this.g=(t>>8&255)/255,this.b=(t&255)/255,ye.colorSpaceToWorking(this,e),this}setRGB(t,e,n,s=ye.workingColorSpace){return this.r=t,this.g=e,this.b=n,ye.colorSpaceToWorking(this,s),this}setHSL(t,e,n,s=ye.workingColorSpace){if(t=Xu(t,1),e=me(e,0,1),n=me(n,0,1),e===0)this.r=this.g=this.b=n;else{let r=n<=.5?n*(1+e):n+e-n*e,o=2*n-r;this.r=Jh(o,r,t+1/3),this.g=Jh(o,r,t),this.b=Jh(o,r,t-1/3)}return ye.colorSpaceToWorking(this,s),this}setStyle(t,e=ai){function n(r){r!==void 0&&parseFloat(r)<1&&Zt("Color: Alpha component of "+t+" will be ignored.")}let s;if(s=/^(\w+)\(([^\)]*)\)/.exec(t)){let r,o=s[1],a=s[2];switch(o){case"rgb":case"rgba":if(r=/^\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(255,parseInt(r[1],10))/255,Math.min(255,parseInt(r[2],10))/255,Math.min(255,parseInt(r[3],10))/255,e);if(r=/^\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setRGB(Math.min(100,parseFloat(r[1]))/100,Math.min(100,parseFloat(r[2]))/100,Math.min(100,parseFloat(r[3]))/100,e);break;case"hsl":case"hsla":if(r=/^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+))\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*,\s*(\d+(?:\.\d+)?|\.\d+)\%\s*(?:,\s*(\d+(?:\.\d+)?|\.\d+)\s*)?$/.exec(a))return n(r[4]),this.setHSL(parseFloat(r[1])/360,parseFloat(r[2])/100,parseFloat(r[3])/100,e);break;default:Zt("Color: Unknown color model "+t)}}else if(s=/^\#([A-Fa-f\d]+)$/.exec(t)){let r=s[1],o=r.length;if(o===3)return this.setRGB(parseInt(r.charAt(0),16)/15,parseInt(r.charAt(1),16)/15,parseInt(r.charAt(2),16)/15,e);if(o===6)return this.setHex(parseInt(r,16),e);Zt("Color: Invalid hex color "+t)}else if(t&&t.length>0)return this.setColorName(t,e);return this}setColorName(t,e=ai){let n=Om[t.toLowerCase()];return n!==void 0?this.setHex(n,e):Zt("Color: Unknown color "+t),this}clone(){return new this.constructor(this.r,this.g,this.b)}copy(t){return this.r=t.r,this.g=t.g,this.b=t.b,this}copySRGBToLinear(t){return this.r=os(t.r),this.g=os(t.g),this.b=os(t.b),this}copyLinearToSRGB(t){return this.r=Wr(t.r),this.g=Wr(t.g),this.b=Wr(t.b),this}convertSRGBToLinear(){return this.copySRGBToLinear(this),this}convertLinearToSRGB(){return this.copyLinearToSRGB(this),this}getHex(t=ai){return ye.workingToColorSpace(Nn.copy(this),t),Math.round(me(Nn.r*255,0,255))*65536+Math.round(me(Nn.g*255,0,255))*256+Math.round(me(Nn.b*255,0,255))}getHexString(t=ai){return("000000"+this.getHex(t).toString(16)).slice(-6)}getHSL(t,e=ye.workingColorSpace){ye.workingToColorSpace(Nn.copy(this),e);let n=Nn.r,s=Nn.g,r=Nn.b,o=Math.max(n,s,r),a=Math.min(n,s,r),c,l,u=(a+o)/2;if(a===o)c=0,l=0;else{let h=o-a;switch(l=u<=.5?h/(o+a):h/(2-o-a),o){case n:c=(s-r)/h+(s<r?6:0);break;case s:c=(r-n)/h+2;break;case r:c=(n-s)/h+4;break}c/=6}return t.h=c,t.s=l,t.l=u,t}getRGB(t,e=ye.workingColorSpace){return ye.workingToColorSpace(Nn.copy(this),e),t.r=Nn.r,t.g=Nn.g,t.b=Nn.b,t}getStyle(t=ai){ye.workingToColorSpace(Nn.copy(this),t);let e=Nn.r,n=Nn.g,s=Nn.b;return t!==ai?`color(${t} ${e.toFixed(3)} ${n.toFixed(3)} ${s.toFixed(3)})`:`rgb(${Math.round(e*255)},${Math.round(n*255)},${Math.round(s*255)})`}offsetHSL(t,e,n){return this.getHSL(Ts),this.setHSL(Ts.h+t,Ts.s+e,Ts.l+n)}add(t){return this.r+=t.r,this.g+=t.g,this.b+=t.b,this}addColors(t,e){return this.r=t.r+e.r,this.g=t.g+e.g,this.b=t.b+e.b,this}addScalar(t){return this.r+=t,this.g+=t,this.b+=t,this}sub(t){return this.r=Math.max(0,this.r-t.r),this.g=Math.max(0,this.g-t.g),this.b=Math.max(0,this.b-t.b),this}multiply(t){return this.r*=t.r,this.g*=t.g,this.b*=t.b,this}multiplyScalar(t){return this.r*=t,this.g*=t,this.b*=t,this}lerp(t,e){return this.r+=(t.r-this.r)*e,this.g+=(t.g-this.g)*e,this.b+=(t.b-this.b)*e,this}lerpColors(t,e,n){return this.r=t.r+(e.r-t.r)*n,this.g=t.g+(e.g-t.g)*n,this.b=t.b+(e.b-t.b)*n,this}lerpHSL(t,e){this.getHSL(Ts),t.getHSL(Za);let n=No(Ts.h,Za.h,e),s=No(Ts.s,Za.s,e),r=No(Ts.l,Za.l,e);return this.setHSL(n,s,r),this}setFromVector3(t){return this.r=t.x,this.g=t.y,this.b=t.z,this}applyMatrix3(t){let e=this.r,n=this.g,s=this.b,r=t.elements;return this.r=r[0]*e+r[3]*n+r[6]*s,this.g=r[1]*e+r[4]*n+r[7]*s,this.b=r[2]*e+r[5]*n+r[8]*s,this}equals(t){return t.r===this.r&&t.g===this.g&&t.b===this.b}fromArray(t,e=0){return this.r=t[e],this.g=t[e+1],this.b=t[e+2],this}toArray(t=[],e=0){return t[e]=this.r,t[e+1]=this.g,t[e+2]=this.b,t}fromBufferAttribute(t,e){return this.r=t.getX(e),this.g=t.getY(e),this.b=t.getZ(e),this}toJSON(){return this.getHex()}*[Symbol.iterator](){yield this.r,yield this.g,yield this.b}},Nn=new ae;ae.NAMES=Om;var Vo=class extends Fn{constructor(){super(),this.isScene=!0,this.type="Scene",this.background=null,this.environment=null,this.fog=null,this.backgroundBlurriness=0,this.backgroundIntensity=1,this.backgroundRotation=new ls,this.environmentIntensity=1,this.environmentRotation=new ls,this.overrideMaterial=null,typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}copy(t,e){return super.copy(t,e),this.background=t.background!==null?t.background.clone():null,this.environment=t.environment!==null?t.environment.clone():null,this.fog=t.fog!==null?t.fog.clone():null,this.backgroundBlurriness=t.backgroundBlurriness,this.backgroundIntensity=t.backgroundIntensity,this.backgroundRotation.copy(t.backgroundRotation),this.environmentIntensity=t.environmentIntensity,this.environmentRotation.copy(t.environmentRotation),this.overrideMaterial=t.overrideMaterial!==null?t.overrideMaterial.clone():null,this.matrixAutoUpdate=t.matrixAutoUpdate,this}toJSON(t){let e=super.toJSON(t);return this.fog!==null&&(e.object.fog=this.fog.toJSON()),e.object.backgroundBlurriness=this.backgroundBlurriness,e.object.backgroundIntensity=this.backgroundIntensity,e.object.backgroundRotation=this.backgroundRotation.toArray(),e.object.environmentIntensity=this.environmentIntensity,e.object.environmentRotation=this.environmentRotation.toArray(),e}},wi=new W,ns=new W,Kh=new W,is=new W,Ur=new W,Fr=new W,Fp=new W,jh=new W,Qh=new W,tu=new W,eu=new $e,nu=new $e,iu=new $e,Ps=class i{constructor(t=new W,e=new W,n=new W){this.a=t,this.b=e,this.c=n}static getNormal(t,e,n,s){s.subVectors(n,e),wi.subVectors(t,e),s.cross(wi);let r=s.lengthSq();return r>0?s.multiplyScalar(1/Math.sqrt(r)):s.set(0,0,0)}static getBarycoord(t,e,n,s,r){wi.subVectors(s,e),ns.subVectors(n,e),Kh.subVectors(t,e);let o=wi.dot(wi),a=wi.dot(ns),c=wi.dot(Kh),l=ns.dot(ns),u=ns.dot(Kh),h=o*l-a*a;if(h===0)return r.set(0,0,0),null;let d=1/h,f=(l*c-a*u)*d,g=(o*u-a*c)*d;return r.set(1-f-g,g,f)}static containsPoint(t,e,n,s){return this.getBarycoord(t,e,n,s,is)===null?!1:is.x>=0&&is.y>=0&&is.x+is.y<=1}static getInterpolation(t,e,n,s,r,o,a,c){return this.getBarycoord(t,e,n,s,is)===null?(c.x=0,c.y=0,"z"in c&&(c.z=0),"w"in c&&(c.w=0),null):(c.setScalar(0),c.addScaledVector(r,is.x),c.addScaledVector(o,is.y),c.addScaledVector(a,is.z),c)}static getInterpolatedAttribute(t,e,n,s,r,o){return eu.setScalar(0),nu.setScalar(0),iu.setScalar(0),eu.fromBufferAttribute(t,e),nu.fromBufferAttribute(t,n),iu.fromBufferAttribute(t,s),o.setScalar(0),o.addScaledVector(eu,r.x),o.addScaledVector(nu,r.y),o.addScaledVector(iu,r.z),o}static isFrontFacing(t,e,n,s){return wi.subVectors(n,e),ns.subVectors(t,e),wi.cross(ns).dot(s)<0}set(t,e,n){return this.a.copy(t),this.b.copy(e),this.c.copy(n),this}setFromPointsAndIndices(t,e,n,s){return this.a.copy(t[e]),this.b.copy(t[n]),this.c.copy(t[s]),this}setFromAttributeAndIndices(t,e,n,s){return this.a.fromBufferAttribute(t,e),this.b.fromBufferAttribute(t,n),this.c.fromBufferAttribute(t,s),this}clone(){return new this.constructor().copy(this)}copy(t){return this.a.copy(t.a),this.b.copy(t.b),this.c.copy(t.c),this}getArea(){return wi.subVectors(this.c,this.b),ns.subVectors(this.a,this.b),wi.cross(ns).length()*.5}getMidpoint(t){return t.addVectors(this.a,this.b).add(this.c).multiplyScalar(1/3)}getNormal(t){return i.getNormal(this.a,this.b,this.c,t)}getPlane(t){return t.setFromCoplanarPoints(this.a,this.b,this.c)}getBarycoord(t,e){return i.getBarycoord(t,this.a,this.b,this.c,e)}getInterpolation(t,e,n,s,r){return i.getInterpolation(t,this.a,this.b,this.c,e,n,s,r)}containsPoint(t){return i.containsPoint(t,this.a,this.b,this.c)}isFrontFacing(t){return i.isFrontFacing(this.a,this.b,this.c,t)}intersectsBox(t){return t.intersectsTriangle(this)}closestPointToPoint(t,e){let n=this.a,s=this.b,r=this.c,o,a;Ur.subVectors(s,n),Fr.subVectors(r,n),jh.subVectors(t,n);let c=Ur.dot(jh),l=Fr.dot(jh);if(c<=0&&l<=0)return e.copy(n);Qh.subVectors(t,s);let u=Ur.dot(Qh),h=Fr.dot(Qh);if(u>=0&&h<=u)return e.copy(s);let d=c*h-u*l;if(d<=0&&c>=0&&u<=0&&c-u>0)return o=c/(c-u),e.copy(n).addScaledVector(Ur,o);tu.subVectors(t,r);let f=Ur.dot(tu),g=Fr.dot(tu);if(g>=0&&f<=g)return e.copy(r);let v=f*l-c*g;if(v<=0&&l>=0&&g<=0)return a=l/(l-g),e.copy(n).addScaledVector(Fr,a);let p=u*g-f*h;if(p<=0&&h-u>=0&&f-g>=0)return Fp.subVectors(r,s),a=(h-u)/(h-u+(f-g)),e.copy(s).addScaledVector(Fp,a);let m=1/(p+v+d);return o=v*m,a=d*m,e.copy(n).addScaledVector(Ur,o).addScaledVector(Fr,a)}equals(t){return t.a.equals(this.a)&&t.b.equals(this.b)&&t.c.equals(this.c)}},Is=class{constructor(t=new W(1/0,1/0,1/0),e=new W(-1/0,-1/0,-1/0)){this.isBox3=!0,this.min=t,this.max=e}set(t,e){return this.min.copy(t),this.max.copy(e),this}setFromArray(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e+=3)this.expandByPoint(Ei.fromArray(t,e));return this}setFromBufferAttribute(t){this.makeEmpty();for(let e=0,n=t.count;e<n;e++)this.expandByPoint(Ei.fromBufferAttribute(t,e));return this}setFromPoints(t){this.makeEmpty();for(let e=0,n=t.length;e<n;e++)this.expandByPoint(t[e]);return this}setFromCenterAndSize(t,e){let n=Ei.copy(e).multiplyScalar(.5);return this.min.copy(t).sub(n),this.max.copy(t).add(n),this}setFromObject(t,e=!1){return this.makeEmpty(),this.expandByObject(t,e)}clone(){return new this.constructor().copy(this)}copy(t){return this.min.copy(t.min),this.max.copy(t.max),this}makeEmpty(){return this.min.x=this.min.y=this.min.z=1/0,this.max.x=this.max.y=this.max.z=-1/0,this}isEmpty(){return this.max.x<this.min.x||this.max.y<this.min.y||this.max.z<this.min.z}getCenter(t){return this.isEmpty()?t.set(0,0,0):t.addVectors(this.min,this.max).multiplyScalar(.5)}getSize(t){return this.isEmpty()?t.set(0,0,0):t.subVectors(this.max,this.min)}expandByPoint(t){return this.min.min(t),this.max.max(t),this}expandByVector(t){return this.min.sub(t),this.max.add(t),this}expandByScalar(t){return this.min.addScalar(-t),this.max.addScalar(t),this}expandByObject(t,e=!1){t.updateWorldMatrix(!1,!1);let n=t.geometry;if(n!==void 0){let r=n.getAttribute("position");if(e===!0&&r!==void 0&&t.isInstancedMesh!==!0&&t.isBatchedMesh!==!0)for(let o=0,a=r.count;o<a;o++)t.isMesh===!0?t.getVertexPosition(o,Ei):Ei.fromBufferAttribute(r,o),Ei.applyMatrix4(t.matrixWorld),this.expandByPoint(Ei);else t.boundingBox!==void 0?(t.boundingBox===null&&t.computeBoundingBox(),Ja.copy(t.boundingBox)):(n.boundingBox===null&&n.computeBoundingBox(),Ja.copy(n.boundingBox)),Ja.applyMatrix4(t.matrixWorld),this.union(Ja)}let s=t.children;for(let r=0,o=s.length;r<o;r++)this.expandByObject(s[r],e);return this}containsPoint(t){return t.x>=this.min.x&&t.x<=this.max.x&&t.y>=this.min.y&&t.y<=this.max.y&&t.z>=this.min.z&&t.z<=this.max.z}containsBox(t){return this.min.x<=t.min.x&&t.max.x<=this.max.x&&this.min.y<=t.min.y&&t.max.y<=this.max.y&&this.min.z<=t.min.z&&t.max.z<=this.max.z}getParameter(t,e){return e.set((t.x-this.min.x)/(this.max.x-this.min.x),(t.y-this.min.y)/(this.max.y-this.min.y),(t.z-this.min.z)/(this.max.z-this.min.z))}intersectsBox(t){return t.max.x>=this.min.x&&t.min.x<=this.max.x&&t.max.y>=this.min.y&&t.min.y<=this.max.y&&t.max.z>=this.min.z&&t.min.z<=this.max.z}intersectsSphere(t){return this.clampPoint(t.center,Ei),Ei.distanceToSquared(t.center)<=t.radius*t.radius}intersectsPlane(t){let e,n;return t.normal.x>0?(e=t.normal.x*this.min.x,n=t.normal.x*this.max.x):(e=t.normal.x*this.max.x,n=t.normal.x*this.min.x),t.normal.y>0?(e+=t.normal.y*this.min.y,n+=t.normal.y*this.max.y):(e+=t.normal.y*this.max.y,n+=t.normal.y*this.min.y),t.normal.z>0?(e+=t.normal.z*this.min.z,n+=t.normal.z*this.max.z):(e+=t.normal.z*this.max.z,n+=t.normal.z*this.min.z),e<=-t.constant&&n>=-t.constant}intersectsTriangle(t){if(this.isEmpty())return!1;this.getCenter(Ro),Ka.subVectors(this.max,Ro),Or.subVectors(t.a,Ro),Br.subVectors(t.b,Ro),kr.subVectors(t.c,Ro),As.subVectors(Br,Or),Rs.subVectors(kr,Br),Js.subVectors(Or,kr);let e=[0,-As.z,As.y,0,-Rs.z,Rs.y,0,-Js.z,Js.y,As.z,0,-As.x,Rs.z,0,-Rs.x,Js.z,0,-Js.x,-As.y,As.x,0,-Rs.y,Rs.x,0,-Js.y,Js.x,0];return!su(e,Or,Br,kr,Ka)||(e=[1,0,0,0,1,0,0,0,1],!su(e,Or,Br,kr,Ka))?!1:(ja.crossVectors(As,Rs),e=[ja.x,ja.y,ja.z],su(e,Or,Br,kr,Ka))}clampPoint(t,e){return e.copy(t).clamp(this.min,this.max)}distanceToPoint(t){return this.clampPoint(t,Ei).distanceTo(t)}getBoundingSphere(t){return this.isEmpty()?t.makeEmpty():(this.getCenter(t.center),t.radius=this.getSize(Ei).length()*.5),t}intersect(t){return this.min.max(t.min),this.max.min(t.max),this.isEmpty()&&this.makeEmpty(),this}union(t){return this.min.min(t.min),this.max.max(t.max),this}applyMatrix4(t){return this.isEmpty()?this:(ss[0].set(this.min.x,this.min.y,this.min.z).applyMatrix4(t),ss[1].set(this.min.x,this.min.y,this.max.z).applyMatrix4(t),ss[2].set(this.min.x,this.max.y,this.min.z).applyMatrix4(t),ss[3].set(this.min.x,this.max.y,this.max.z).applyMatrix4(t),ss[4].set(this.max.x,this.min.y,this.min.z).applyMatrix4(t),ss[5].set(this.max.x,this.min.y,this.max.z).applyMatrix4(t),ss[6].set(this.max.x,this.max.y,this.min.z).applyMatrix4(t),ss[7].set(this.max.x,this.max.y,this.max.z).applyMatrix4(t),this.setFromPoints(ss),this)}translate(t){return this.min.add(t),this.max.add(t),this}equals(t){return t.min.equals(this.min)&&t.max.equals(this.max)}toJSON(){return{min:this.min.toArray(),max:this.max.toArray()}}fromJSON(t){return this.min.fromArray(t.min),this.max.fromArray(t.max),this}},ss=[new W,new W,new W,new W,new W,new W,new W,new W],Ei=new W,Ja=new Is,Or=new W,Br=new W,kr=new W,As=new W,Rs=new W,Js=new W,Ro=new W,Ka=new W,ja=new W,Ks=new W;function su(i,t,e,n,s){for(let r=0,o=i.length-3;r<=o;r+=3){Ks.fromArray(i,r);let a=s.x*Math.abs(Ks.x)+s.y*Math.abs(Ks.y)+s.z*Math.abs(Ks.z),c=t.dot(Ks),l=e.dot(Ks),u=n.dot(Ks);if(Math.max(-Math.max(c,l,u),Math.min(c,l,u))>a)return!1}return!0}var dn=new W,Qa=new ie,Cx=0,Un=class extends Ai{constructor(t,e,n=!1){if(super(),Array.isArray(t))throw new TypeError("THREE.BufferAttribute: array should be a Typed Array.");this.isBufferAttribute=!0,Object.defineProperty(this,"id",{value:Cx++}),this.name="",this.array=t,this.itemSize=e,this.count=t!==void 0?t.length/e:0,this.normalized=n,this.usage=Pm,this.updateRanges=[],this.gpuType=Pi,this.version=0,this._normalizationScale=t!==void 0?Yu(t):void 0}onUploadCallback(){}set needsUpdate(t){t===!0&&this.version++}setUsage(t){return this.usage=t,this}addUpdateRange(t,e){this.updateRanges.push({start:t,count:e})}clearUpdateRanges(){this.updateRanges.length=0}copy(t){return this.name=t.name,this.array=new t.array.constructor(t.array),this.itemSize=t.itemSize,this.count=t.count,this.normalized=t.normalized,this.usage=t.usage,this.gpuType=t.gpuType,this._normalizationScale=t._normalizationScale,this}copyAt(t,e,n){t*=this.itemSize,n*=e.itemSize;for(let s=0,r=this.itemSize;s<r;s++)this.array[t+s]=e.array[n+s];return this}copyArray(t){return this.array.set(t),this}applyMatrix3(t){if(this.itemSize===2)for(let e=0,n=this.count;e<n;e++)Qa.fromBufferAttribute(this,e),Qa.applyMatrix3(t),this.setXY(e,Qa.x,Qa.y);else if(this.itemSize===3)for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix3(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyMatrix4(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyMatrix4(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}applyNormalMatrix(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.applyNormalMatrix(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}transformDirection(t){for(let e=0,n=this.count;e<n;e++)dn.fromBufferAttribute(this,e),dn.transformDirection(t),this.setXYZ(e,dn.x,dn.y,dn.z);return this}set(t,e=0){return this.array.set(t,e),this}getComponent(t,e){let n=this.array[t*this.itemSize+e];return this.normalized&&(n=this._denormalize(n)),n}setComponent(t,e,n){return this.normalized&&(n=this._normalize(n)),this.array[t*this.itemSize+e]=n,this}getX(t){let e=this.array[t*this.itemSize];return this.normalized&&(e=this._denormalize(e)),e}setX(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize]=e,this}getY(t){let e=this.array[t*this.itemSize+1];return this.normalized&&(e=this._denormalize(e)),e}setY(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+1]=e,this}getZ(t){let e=this.array[t*this.itemSize+2];return this.normalized&&(e=this._denormalize(e)),e}setZ(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+2]=e,this}getW(t){let e=this.array[t*this.itemSize+3];return this.normalized&&(e=this._denormalize(e)),e}setW(t,e){return this.normalized&&(e=this._normalize(e)),this.array[t*this.itemSize+3]=e,this}setXY(t,e,n){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n)),this.array[t+0]=e,this.array[t+1]=n,this}setXYZ(t,e,n,s){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this}setXYZW(t,e,n,s,r){return t*=this.itemSize,this.normalized&&(e=this._normalize(e),n=this._normalize(n),s=this._normalize(s),r=this._normalize(r)),this.array[t+0]=e,this.array[t+1]=n,this.array[t+2]=s,this.array[t+3]=r,this}onUpload(t){return this.onUploadCallback=t,this}clone(){return new this.constructor(this.array,this.itemSize).copy(this)}toJSON(){let t={itemSize:this.itemSize,type:this.array.constructor.name,array:Array.from(this.array),normalized:this.normalized};return t.name=this.name,t.usage=this.usage,t.gpuType=this.gpuType,t}dispose(){this.dispatchEvent({type:"dispose"})}_denormalize(t){let e=this._normalizationScale;return e!==void 0?Math.max(t/e,-1):Um(t,this.array)}_normalize(t){let e=this._normalizationScale;return e!==void 0?Math.round(t*e):Fm(t,this.array)}};var Go=class extends Un{constructor(t,e,n){super(new Uint16Array(t),e,n)}};var Ho=class extends Un{constructor(t,e,n){super(new Uint32Array(t),e,n)}};var Pn=class extends Un{constructor(t,e,n){super(new Float32Array(t),e,n)}},Px=new Is,Co=new W,ru=new W,tr=class{constructor(t=new W,e=-1){this.isSphere=!0,this.center=t,this.radius=e}set(t,e){return this.center.copy(t),this.radius=e,this}setFromPoints(t,e){let n=this.center;e!==void 0?n.copy(e):Px.setFromPoints(t).getCenter(n);let s=0;for(let r=0,o=t.length;r<o;r++)s=Math.max(s,n.distanceToSquared(t[r]));return this.radius=Math.sqrt(s),this}copy(t){return this.center.copy(t.center),this.radius=t.radius,this}isEmpty(){return this.radius<0}makeEmpty(){return this.center.set(0,0,0),this.radius=-1,this}containsPoint(t){return t.distanceToSquared(this.center)<=this.radius*this.radius}distanceToPoint(t){return t.distanceTo(this.center)-this.radius}intersectsSphere(t){let e=this.radius+t.radius;return t.center.distanceToSquared(this.center)<=e*e}intersectsBox(t){return t.intersectsSphere(this)}intersectsPlane(t){return Math.abs(t.distanceToPoint(this.center))<=this.radius}clampPoint(t,e){let n=this.center.distanceToSquared(t);return e.copy(t),n>this.radius*this.radius&&(e.sub(this.center).normalize(),e.multiplyScalar(this.radius).add(this.center)),e}getBoundingBox(t){return this.isEmpty()?(t.makeEmpty(),t):(t.set(this.center,this.center),t.expandByScalar(this.radius),t)}applyMatrix4(t){return this.center.applyMatrix4(t),this.radius=this.radius*t.getMaxScaleOnAxis(),this}translate(t){return this.center.add(t),this}expandByPoint(t){if(this.isEmpty())return this.center.copy(t),this.radius=0,this;Co.subVectors(t,this.center);let e=Co.lengthSq();if(e>this.radius*this.radius){let n=Math.sqrt(e),s=(n-this.radius)*.5;this.center.addScaledVector(Co,s/n),this.radius+=s}return this}union(t){return t.isEmpty()?this:this.isEmpty()?(this.copy(t),this):(this.center.equals(t.center)===!0?this.radius=Math.max(this.radius,t.radius):(ru.subVectors(t.center,this.center).setLength(t.radius),this.expandByPoint(Co.copy(t.center).add(ru)),this.expandByPoint(Co.copy(t.center).sub(ru))),this)}equals(t){return t.center.equals(this.center)&&t.radius===this.radius}clone(){return new this.constructor().copy(this)}toJSON(){return{radius:this.radius,center:this.center.toArray()}}fromJSON(t){return this.radius=t.radius,this.center.fromArray(t.center),this}},Ix=0,mi=new Xe,ou=new Fn,zr=new W,oi=new Is,Po=new Is,Tn=new W,On=class i extends Ai{constructor(){super(),this.isBufferGeometry=!0,Object.defineProperty(this,"id",{value:Ix++}),this.uuid=ro(),this.name="",this.type="BufferGeometry",this.index=null,this.indirect=null,this.indirectOffset=0,this.attributes={},this.morphAttributes={},this.morphTargetsRelative=!1,this.groups=[],this.boundingBox=null,this.boundingSphere=null,this.drawRange={start:0,count:1/0},this.userData={},this._transformed=!1}getIndex(){return this.index}setIndex(t){return Array.isArray(t)?this.index=new(nx(t)?Ho:Go)(t,1):this.index=t,this}setIndirect(t,e=0){return this.indirect=t,this.indirectOffset=e,this}getIndirect(){return this.indirect}getAttribute(t){return this.attributes[t]}setAttribute(t,e){return this.attributes[t]=e,this}deleteAttribute(t){return delete this.attributes[t],this}hasAttribute(t){return this.attributes[t]!==void 0}addGroup(t,e,n=0){this.groups.push({start:t,count:e,materialIndex:n})}clearGroups(){this.groups=[]}setDrawRange(t,e){this.drawRange.start=t,this.drawRange.count=e}applyMatrix4(t){let e=this.attributes.position;e!==void 0&&(e.applyMatrix4(t),e.needsUpdate=!0);let n=this.attributes.normal;if(n!==void 0){let r=new se().getNormalMatrix(t);n.applyNormalMatrix(r),n.needsUpdate=!0}let s=this.attributes.tangent;return s!==void 0&&(s.transformDirection(t),s.needsUpdate=!0),this.boundingBox!==null&&this.computeBoundingBox(),this.boundingSphere!==null&&this.computeBoundingSphere(),this._transformed=!0,this}applyQuaternion(t){return mi.makeRotationFromQuaternion(t),this.applyMatrix4(mi),this}rotateX(t){return mi.makeRotationX(t),this.applyMatrix4(mi),this}rotateY(t){return mi.makeRotationY(t),this.applyMatrix4(mi),this}rotateZ(t){return mi.makeRotationZ(t),this.applyMatrix4(mi),this}translate(t,e,n){return mi.makeTranslation(t,e,n),this.applyMatrix4(mi),this}scale(t,e,n){return mi.makeScale(t,e,n),this.applyMatrix4(mi),this}lookAt(t){return ou.lookAt(t),ou.updateMatrix(),this.applyMatrix4(ou.matrix),this}center(){return this.computeBoundingBox(),this.boundingBox.getCenter(zr).negate(),this.translate(zr.x,zr.y,zr.z),this}setFromPoints(t){let e=this.getAttribute("position");if(e===void 0){let n=[];for(let s=0,r=t.length;s<r;s++){let o=t[s];n.push(o.x,o.y,o.z||0)}this.setAttribute("position",new Pn(n,3))}else{let n=Math.min(t.length,e.count);for(let s=0;s<n;s++){let r=t[s];e.setXYZ(s,r.x,r.y,r.z||0)}t.length>e.count&&Zt("BufferGeometry: Buffer size too small for points data. Use .dispose() and create a new geometry."),e.needsUpdate=!0}return this}computeBoundingBox(){this.boundingBox===null&&(this.boundingBox=new Is);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ne("BufferGeometry.computeBoundingBox(): GLBufferAttribute requires a manual bounding box.",this),this.boundingBox.set(new W(-1/0,-1/0,-1/0),new W(1/0,1/0,1/0));return}if(t!==void 0){if(this.boundingBox.setFromBufferAttribute(t),e)for(let n=0,s=e.length;n<s;n++){let r=e[n];oi.setFromBufferAttribute(r),this.morphTargetsRelative?(Tn.addVectors(this.boundingBox.min,oi.min),this.boundingBox.expandByPoint(Tn),Tn.addVectors(this.boundingBox.max,oi.max),this.boundingBox.expandByPoint(Tn)):(this.boundingBox.expandByPoint(oi.min),this.boundingBox.expandByPoint(oi.max))}}else this.boundingBox.makeEmpty();(isNaN(this.boundingBox.min.x)||isNaN(this.boundingBox.min.y)||isNaN(this.boundingBox.min.z))&&ne('BufferGeometry.computeBoundingBox(): Computed min/max have NaN values. The "position" attribute is likely to have NaN values.',this)}computeBoundingSphere(){this.boundingSphere===null&&(this.boundingSphere=new tr);let t=this.attributes.position,e=this.morphAttributes.position;if(t&&t.isGLBufferAttribute){ne("BufferGeometry.computeBoundingSphere(): GLBufferAttribute requires a manual bounding sphere.",this),this.boundingSphere.set(new W,1/0);return}if(t){let n=this.boundingSphere.center;if(oi.setFromBufferAttribute(t),e)for(let r=0,o=e.length;r<o;r++){let a=e[r];Po.setFromBufferAttribute(a),this.morphTargetsRelative?(Tn.addVectors(oi.min,Po.min),oi.expandByPoint(Tn),Tn.addVectors(oi.max,Po.max),oi.expandByPoint(Tn)):(oi.expandByPoint(Po.min),oi.expandByPoint(Po.max))}oi.getCenter(n);let s=0;for(let r=0,o=t.count;r<o;r++)Tn.fromBufferAttribute(t,r),s=Math.max(s,n.distanceToSquared(Tn));if(e)for(let r=0,o=e.length;r<o;r++){let a=e[r],c=this.morphTargetsRelative;for(let l=0,u=a.count;l<u;l++)Tn.fromBufferAttribute(a,l),c&&(zr.fromBufferAttribute(t,l),Tn.add(zr)),s=Math.max(s,n.distanceToSquared(Tn))}this.boundingSphere.radius=Math.sqrt(s),isNaN(this.boundingSphere.radius)&&ne('BufferGeometry.computeBoundingSphere(): Computed radius is NaN. The "position" attribute is likely to have NaN values.',this)}}computeTangents(){let t=this.index,e=this.attributes;if(t===null||e.position===void 0||e.normal===void 0||e.uv===void 0){ne("BufferGeometry: .computeTangents() failed. Missing required attributes (index, position, normal or uv)");return}let n=e.position,s=e.normal,r=e.uv,o=this.getAttribute("tangent");(o===void 0||o.count!==n.count)&&(o=new Un(new Float32Array(4*n.count),4),this.setAttribute("tangent",o));let a=[],c=[],l=new Uint8Array(n.count);for(let O=0;O<n.count;O++)a[O]=new W,c[O]=new W;let u=new W,h=new W,d=new W,f=new ie,g=new ie,v=new ie,p=new W,m=new W;function y(O,N,I){l[O]=l[N]=l[I]=1,u.fromBufferAttribute(n,O),h.fromBufferAttribute(n,N),d.fromBufferAttribute(n,I),f.fromBufferAttribute(r,O),g.fromBufferAttribute(r,N),v.fromBufferAttribute(r,I),h.sub(u),d.sub(u),g.sub(f),v.sub(f);let V=1/(g.x*v.y-v.x*g.y);isFinite(V)&&(p.copy(h).multiplyScalar(v.y).addScaledVector(d,-g.y).multiplyScalar(V),m.copy(d).multiplyScalar(g.x).addScaledVector(h,-v.x).multiplyScalar(V),a[O].add(p),a[N].add(p),a[I].add(p),c[O].add(m),c[N].add(m),c[I].add(m))}let A=this.groups;A.length===0&&(A=[{start:0,count:t.count}]);for(let O=0,N=A.length;O<N;++O){let I=A[O],V=I.start,G=I.count;for(let D=V,H=V+G;D<H;D+=3)y(t.getX(D+0),t.getX(D+1),t.getX(D+2))}let M=new W,R=new W,E=new W,_=new W;function T(O){E.fromBufferAttribute(s,O),_.copy(E);let N=a[O];M.copy(N),M.sub(E.multiplyScalar(E.dot(N))).normalize(),R.crossVectors(_,N);let V=R.dot(c[O])<0?-1:1;o.setXYZW(O,M.x,M.y,M.z,V)}for(let O=0,N=n.count;O<N;++O)l[O]&&T(O);this._transformed=!0}computeVertexNormals(){let t=this.index,e=this.getAttribute("position");if(e!==void 0){let n=this.getAttribute("normal");if(n===void 0||n.count!==e.count)n=new Un(new Float32Array(e.count*3),3),this.setAttribute("normal",n);else for(let d=0,f=n.count;d<f;d++)n.setXYZ(d,0,0,0);let s=new W,r=new W,o=new W,a=new W,c=new W,l=new W,u=new W,h=new W;if(t)for(let d=0,f=t.count;d<f;d+=3){let g=t.getX(d+0),v=t.getX(d+1),p=t.getX(d+2);s.fromBufferAttribute(e,g),r.fromBufferAttribute(e,v),o.fromBufferAttribute(e,p),u.subVectors(o,r),h.subVectors(s,r),u.cross(h),a.fromBufferAttribute(n,g),c.fromBufferAttribute(n,v),l.fromBufferAttribute(n,p),a.add(u),c.add(u),l.add(u),n.setXYZ(g,a.x,a.y,a.z),n.setXYZ(v,c.x,c.y,c.z),n.setXYZ(p,l.x,l.y,l.z)}else for(let d=0,f=e.count;d<f;d+=3)s.fromBufferAttribute(e,d+0),r.fromBufferAttribute(e,d+1),o.fromBufferAttribute(e,d+2),u.subVectors(o,r),h.subVectors(s,r),u.cross(h),n.setXYZ(d+0,u.x,u.y,u.z),n.setXYZ(d+1,u.x,u.y,u.z),n.setXYZ(d+2,u.x,u.y,u.z);this.normalizeNormals(),n.needsUpdate=!0}}normalizeNormals(){let t=this.attributes.normal;for(let e=0,n=t.count;e<n;e++)Tn.fromBufferAttribute(t,e),Tn.normalize(),t.setXYZ(e,Tn.x,Tn.y,Tn.z)}toNonIndexed(){function t(a,c){let l=a.array,u=a.itemSize,h=a.normalized,d=new l.constructor(c.length*u),f=0,g=0;for(let v=0,p=c.length;v<p;v++){a.isInterleavedBufferAttribute?f=c[v]*a.data.stride+a.offset:f=c[v]*u;for(let m=0;m<u;m++)d[g++]=l[f++]}return new Un(d,u,h)}if(this.index===null)return Zt("BufferGeometry.toNonIndexed(): BufferGeometry is already non-indexed."),this;let e=new i,n=this.index.array,s=this.attributes;for(let a in s){let c=s[a],l=t(c,n);e.setAttribute(a,l)}let r=this.morphAttributes;for(let a in r){let c=[],l=r[a];for(let u=0,h=l.length;u<h;u++){let d=l[u],f=t(d,n);c.push(f)}e.morphAttributes[a]=c}e.morphTargetsRelative=this.morphTargetsRelative;let o=this.groups;for(let a=0,c=o.length;a<c;a++){let l=o[a];e.addGroup(l.start,l.count,l.materialIndex)}return e}toJSON(){let t={metadata:{version:4.7,type:"BufferGeometry",generator:"BufferGeometry.toJSON"}};if(t.uuid=this.uuid,t.type=this.parameters!==void 0&&this._transformed===!0?"BufferGeometry":this.type,t.name=this.name,Object.keys(this.userData).length>0&&(t.userData=this.userData),this.parameters!==void 0&&this._transformed!==!0){let c=this.parameters;for(let l in c)c[l]!==void 0&&(t[l]=c[l]);return t}t.data={attributes:{}};let e=this.index;e!==null&&(t.data.index={type:e.array.constructor.name,array:Array.prototype.slice.call(e.array)});let n=this.attributes;for(let c in n){let l=n[c];t.data.attributes[c]=l.toJSON(t.data)}let s={},r=!1;for(let c in this.morphAttributes){let l=this.morphAttributes[c],u=[];for(let h=0,d=l.length;h<d;h++){let f=l[h];u.push(f.toJSON(t.data))}u.length>0&&(s[c]=u,r=!0)}r&&(t.data.morphAttributes=s,t.data.morphTargetsRelative=this.morphTargetsRelative);let o=this.groups;o.length>0&&(t.data.groups=JSON.parse(JSON.stringify(o)));let a=this.boundingSphere;return a!==null&&(t.data.boundingSphere=a.toJSON()),t}clone(){return new this.constructor().copy(this)}copy(t){this.index=null,this.attributes={},this.morphAttributes={},this.groups=[],this.boundingBox=null,this.boundingSphere=null;let e={};this.name=t.name;let n=t.index;n!==null&&this.setIndex(n.clone());let s=t.attributes;for(let l in s){let u=s[l];this.setAttribute(l,u.clone(e))}let r=t.morphAttributes;for(let l in r){let u=[],h=r[l];for(let d=0,f=h.length;d<f;d++)u.push(h[d].clone(e));this.morphAttributes[l]=u}this.morphTargetsRelative=t.morphTargetsRelative;let o=t.groups;for(let l=0,u=o.length;l<u;l++){let h=o[l];this.addGroup(h.start,h.count,h.materialIndex)}let a=t.boundingBox;a!==null&&(this.boundingBox=a.clone());let c=t.boundingSphere;return c!==null&&(this.boundingSphere=c.clone()),this.drawRange.start=t.drawRange.start,this.drawRange.count=t.drawRange.count,this.userData=t.userData,this._transformed=t._transformed,this}dispose(){this.dispatchEvent({type:"dispose"})}};var au=new W,Lx=new W,Dx=new se,Xn=class{constructor(t=new W(1,0,0),e=0){this.isPlane=!0,this.normal=t,this.constant=e}set(t,e){return this.normal.copy(t),this.constant=e,this}setComponents(t,e,n,s){return this.normal.set(t,e,n),this.constant=s,this}setFromNormalAndCoplanarPoint(t,e){return this.normal.copy(t),this.constant=-e.dot(this.normal),this}setFromCoplanarPoints(t,e,n){let s=au.subVectors(n,e).cross(Lx.subVectors(t,e)).normalize();return this.setFromNormalAndCoplanarPoint(s,t),this}copy(t){return this.normal.copy(t.normal),this.constant=t.constant,this}normalize(){let t=1/this.normal.length();return this.normal.multiplyScalar(t),this.constant*=t,this}negate(){return this.constant*=-1,this.normal.negate(),this}distanceToPoint(t){return this.normal.dot(t)+this.constant}distanceToSphere(t){return this.distanceToPoint(t.center)-t.radius}projectPoint(t,e){return e.copy(t).addScaledVector(this.normal,-this.distanceToPoint(t))}intersectLine(t,e,n=!0){let s=t.delta(au),r=this.normal.dot(s);if(r===0)return this.distanceToPoint(t.start)===0?e.copy(t.start):null;let o=-(t.start.dot(this.normal)+this.constant)/r;return n===!0&&(o<0||o>1)?null:e.copy(t.start).addScaledVector(s,o)}intersectsLine(t){let e=this.distanceToPoint(t.start),n=this.distanceToPoint(t.end);return e<0&&n>0||n<0&&e>0}intersectsBox(t){return t.intersectsPlane(this)}intersectsSphere(t){return t.intersectsPlane(this)}coplanarPoint(t){return t.copy(this.normal).multiplyScalar(-this.constant)}applyMatrix4(t,e){let n=e||Dx.getNormalMatrix(t),s=this.coplanarPoint(au).applyMatrix4(t),r=this.normal.applyMatrix3(n).normalize();return this.constant=-s.dot(r),this}translate(t){return this.constant-=t.dot(this.normal),this}equals(t){return t.normal.equals(this.normal)&&t.constant===this.constant}clone(){return new this.constructor().copy(this)}toJSON(){return{normal:this.normal.toArray(),constant:this.constant}}fromJSON(t){return this.normal.fromArray(t.normal),this.constant=t.constant,this}},Nx=0,cs=class extends Ai{constructor(){super(),this.isMaterial=!0,Object.defineProperty(this,"id",{value:Nx++}),this.uuid=ro(),this.name="",this.type="Material",this.blending=no,this.side=Ri,this.vertexColors=!1,this.opacity=1,this.transparent=!1,this.alphaHash=!1,this.blendSrc=bu,this.blendDst=wu,this.blendEquation=sr,this.blendSrcAlpha=null,this.blendDstAlpha=null,this.blendEquationAlpha=null,this.blendColor=new ae(0,0,0),this.blendAlpha=0,this.depthFunc=Xr,this.depthTest=!0,this.depthWrite=!0,this.stencilWriteMask=255,this.stencilFunc=wm,this.stencilRef=0,this.stencilFuncMask=255,this.stencilFail=gl,this.stencilZFail=gl,this.stencilZPass=gl,this.stencilWrite=!1,this.clippingPlanes=null,this.clipIntersection=!1,this.clipShadows=!1,this.shadowSide=null,this.colorWrite=!0,this.precision=null,this.polygonOffset=!1,this.polygonOffsetFactor=0,this.polygonOffsetUnits=0,this.dithering=!1,this.alphaToCoverage=!1,this.premultipliedAlpha=!1,this.forceSinglePass=!1,this.allowOverride=!0,this.visible=!0,this.toneMapped=!0,this.userData={},this.version=0,this._alphaTest=0}get alphaTest(){return this._alphaTest}set alphaTest(t){this._alphaTest>0!=t>0&&this.version++,this._alphaTest=t}onBeforeRender(){}onBeforeCompile(){}customProgramCacheKey(){return this.onBeforeCompile.toString()}setValues(t){if(t!==void 0)for(let e in t){let n=t[e];if(n===void 0){Zt(`Material: parameter '${e}' has value of undefined.`);continue}let s=this[e];if(s===void 0){Zt(`Material: '${e}' is not a property of THREE.${this.type}.`);continue}s&&s.isColor?s.set(n):s&&s.isVector2&&n&&n.isVector2||s&&s.isEuler&&n&&n.isEuler||s&&s.isVector3&&n&&n.isVector3?s.copy(n):this[e]=n}}toJSON(t){let e=t===void 0||typeof t=="string";e&&(t={textures:{},images:{}});let n={metadata:{version:4.7,type:"Material",generator:"Material.toJSON"}};n.uuid=this.uuid,n.type=this.type,n.blending=this.blending,n.side=this.side,n.shadowSide=this.shadowSide,n.vertexColors=this.vertexColors,n.opacity=this.opacity,n.transparent=this.transparent,n.blendSrc=this.blendSrc,n.blendDst=this.blendDst,n.blendEquation=this.blendEquation,n.blendSrcAlpha=this.blendSrcAlpha,n.blendDstAlpha=this.blendDstAlpha,n.blendEquationAlpha=this.blendEquationAlpha,n.blendColor=this.blendColor.getHex(),n.blendAlpha=this.blendAlpha,n.depthFunc=this.depthFunc,n.depthTest=this.depthTest,n.depthWrite=this.depthWrite,n.colorWrite=this.colorWrite,n.clipIntersection=this.clipIntersection,n.clipShadows=this.clipShadows,n.stencilWriteMask=this.stencilWriteMask,n.stencilFunc=this.stencilFunc,n.stencilRef=this.stencilRef,n.stencilFuncMask=this.stencilFuncMask,n.stencilFail=this.stencilFail,n.stencilZFail=this.stencilZFail,n.stencilZPass=this.stencilZPass,n.stencilWrite=this.stencilWrite,n.polygonOffset=this.polygonOffset,n.polygonOffsetFactor=this.polygonOffsetFactor,n.polygonOffsetUnits=this.polygonOffsetUnits,n.dithering=this.dithering,n.alphaTest=this.alphaTest,n.alphaHash=this.alphaHash,n.alphaToCoverage=this.alphaToCoverage,n.premultipliedAlpha=this.premultipliedAlpha,n.forceSinglePass=this.forceSinglePass,n.allowOverride=this.allowOverride,n.visible=this.visible,n.toneMapped=this.toneMapped,n.name=this.name,this.color&&this.color.isColor&&(n.color=this.color.getHex()),this.roughness!==void 0&&(n.roughness=this.roughness),this.metalness!==void 0&&(n.metalness=this.metalness),this.sheen!==void 0&&(n.sheen=this.sheen),this.sheenColor&&this.sheenColor.isColor&&(n.sheenColor=this.sheenColor.getHex()),this.sheenRoughness!==void 0&&(n.sheenRoughness=this.sheenRoughness),this.emissive&&this.emissive.isColor&&(n.emissive=this.emissive.getHex()),this.emissiveIntensity!==void 0&&(n.emissiveIntensity=this.emissiveIntensity),this.specular&&this.specular.isColor&&(n.specular=this.specular.getHex()),this.specularIntensity!==void 0&&(n.specularIntensity=this.specularIntensity),this.specularColor&&this.specularColor.isColor&&(n.specularColor=this.specularColor.getHex()),this.shininess!==void 0&&(n.shininess=this.shininess),this.clearcoat!==void 0&&(n.clearcoat=this.clearcoat),this.clearcoatRoughness!==void 0&&(n.clearcoatRoughness=this.clearcoatRoughness),this.diffuseRoughness!==void 0&&(n.diffuseRoughness=this.diffuseRoughness),this.diffuseRoughnessMap&&this.diffuseRoughnessMap.isTexture&&(n.diffuseRoughnessMap=this.diffuseRoughnessMap.toJSON(t).uuid),this.clearcoatMap&&this.clearcoatMap.isTexture&&(n.clearcoatMap=this.clearcoatMap.toJSON(t).uuid),this.clearcoatRoughnessMap&&this.clearcoatRoughnessMap.isTexture&&(n.clearcoatRoughnessMap=this.clearcoatRoughnessMap.toJSON(t).uuid),this.clearcoatNormalMap&&this.clearcoatNormalMap.isTexture&&(n.clearcoatNormalMap=this.clearcoatNormalMap.toJSON(t).uuid,n.clearcoatNormalScale=this.clearcoatNormalScale.toArray()),this.sheenColorMap&&this.sheenColorMap.isTexture&&(n.sheenColorMap=this.sheenColorMap.toJSON(t).uuid),this.sheenRoughnessMap&&this.sheenRoughnessMap.isTexture&&(n.sheenRoughnessMap=this.sheenRoughnessMap.toJSON(t).uuid),this.dispersion!==void 0&&(n.dispersion=this.dispersion),this.retroreflectivity!==void 0&&(n.retroreflectivity=this.retroreflectivity),this.iridescence!==void 0&&(n.iridescence=this.iridescence),this.iridescenceIOR!==void 0&&(n.iridescenceIOR=this.iridescenceIOR),this.iridescenceThicknessMinimum!==void 0&&(n.iridescenceThicknessMinimum=this.iridescenceThicknessMinimum),this.iridescenceThicknessMaximum!==void 0&&(n.iridescenceThicknessMaximum=this.iridescenceThicknessMaximum),this.iridescenceMap&&this.iridescenceMap.isTexture&&(n.iridescenceMap=this.iridescenceMap.toJSON(t).uuid),this.iridescenceThicknessMap&&this.iridescenceThicknessMap.isTexture&&(n.iridescenceThicknessMap=this.iridescenceThicknessMap.toJSON(t).uuid),this.anisotropy!==void 0&&(n.anisotropy=this.anisotropy),this.anisotropyRotation!==void 0&&(n.anisotropyRotation=this.anisotropyRotation),this.anisotropyMap&&this.anisotropyMap.isTexture&&(n.anisotropyMap=this.anisotropyMap.toJSON(t).uuid),this.map&&this.map.isTexture&&(n.map=this.map.toJSON(t).uuid),this.matcap&&this.matcap.isTexture&&(n.matcap=this.matcap.toJSON(t).uuid),this.alphaMap&&this.alphaMap.isTexture&&(n.alphaMap=this.alphaMap.toJSON(t).uuid),this.lightMap&&this.lightMap.isTexture&&(n.lightMap=this.lightMap.toJSON(t).uuid,n.lightMapIntensity=this.lightMapIntensity),this.aoMap&&this.aoMap.isTexture&&(n.aoMap=this.aoMap.toJSON(t).uuid,n.aoMapIntensity=this.aoMapIntensity),this.bumpMap&&this.bumpMap.isTexture&&(n.bumpMap=this.bumpMap.toJSON(t).uuid,n.bumpScale=this.bumpScale),this.normalMap&&this.normalMap.isTexture&&(n.normalMap=this.normalMap.toJSON(t).uuid,n.normalMapType=this.normalMapType,n.normalScale=this.normalScale.toArray()),this.displacementMap&&this.displacementMap.isTexture&&(n.displacementMap=this.displacementMap.toJSON(t).uuid,n.displacementScale=this.displacementScale,n.displacementBias=this.displacementBias),this.roughnessMap&&this.roughnessMap.isTexture&&(n.roughnessMap=this.roughnessMap.toJSON(t).uuid),this.metalnessMap&&this.metalnessMap.isTexture&&(n.metalnessMap=this.metalnessMap.toJSON(t).uuid),this.emissiveMap&&this.emissiveMap.isTexture&&(n.emissiveMap=this.emissiveMap.toJSON(t).uuid),this.specularMap&&this.specularMap.isTexture&&(n.specularMap=this.specularMap.toJSON(t).uuid),this.specularIntensityMap&&this.specularIntensityMap.isTexture&&(n.specularIntensityMap=this.specularIntensityMap.toJSON(t).uuid),this.specularColorMap&&this.specularColorMap.isTexture&&(n.specularColorMap=this.specularColorMap.toJSON(t).uuid),this.envMap&&this.envMap.isTexture&&(n.envMap=this.envMap.toJSON(t).uuid,this.combine!==void 0&&(n.combine=this.combine)),this.envMapRotation!==void 0&&(n.envMapRotation=this.envMapRotation.toArray()),this.envMapIntensity!==void 0&&(n.envMapIntensity=this.envMapIntensity),this.reflectivity!==void 0&&(n.reflectivity=this.reflectivity),this.refractionRatio!==void 0&&(n.refractionRatio=this.refractionRatio),this.gradientMap&&this.gradientMap.isTexture&&(n.gradientMap=this.gradientMap.toJSON(t).uuid),this.transmission!==void 0&&(n.transmission=this.transmission),this.transmissionMap&&this.transmissionMap.isTexture&&(n.transmissionMap=this.transmissionMap.toJSON(t).uuid),this.thickness!==void 0&&(n.thickness=this.thickness),this.thicknessMap&&this.thicknessMap.isTexture&&(n.thicknessMap=this.thicknessMap.toJSON(t).uuid),this.attenuationDistance!==void 0&&(n.attenuationDistance=this.attenuationDistance),this.attenuationColor!==void 0&&(n.attenuationColor=this.attenuationColor.getHex()),this.size!==void 0&&(n.size=this.size),this.sizeAttenuation!==void 0&&(n.sizeAttenuation=this.sizeAttenuation),Array.isArray(this.clippingPlanes)&&this.clippingPlanes.length>0&&(n.clippingPlanes=this.clippingPlanes.map(r=>r.toJSON())),this.rotation!==void 0&&(n.rotation=this.rotation),this.depthPacking!==void 0&&(n.depthPacking=this.depthPacking),this.linewidth!==void 0&&(n.linewidth=this.linewidth),this.linecap!==void 0&&(n.linecap=this.linecap),this.linejoin!==void 0&&(n.linejoin=this.linejoin),this.dashSize!==void 0&&(n.dashSize=this.dashSize),this.gapSize!==void 0&&(n.gapSize=this.gapSize),this.scale!==void 0&&(n.scale=this.scale),this.wireframe!==void 0&&(n.wireframe=this.wireframe),this.wireframeLinewidth!==void 0&&(n.wireframeLinewidth=this.wireframeLinewidth),this.wireframeLinecap!==void 0&&(n.wireframeLinecap=this.wireframeLinecap),this.wireframeLinejoin!==void 0&&(n.wireframeLinejoin=this.wireframeLinejoin),this.flatShading!==void 0&&(n.flatShading=this.flatShading),this.fog!==void 0&&(n.fog=this.fog),Object.keys(this.userData).length>0&&(n.userData=this.userData);function s(r){let o=[];for(let a in r){let c=r[a];delete c.metadata,o.push(c)}return o}if(e){let r=s(t.textures),o=s(t.images);r.length>0&&(n.textures=r),o.length>0&&(n.images=o)}return n}fromJSON(t,e){if(t.uuid!==void 0&&(this.uuid=t.uuid),t.name!==void 0&&(this.name=t.name),t.color!==void 0&&this.color!==void 0&&this.color.setHex(t.color),t.roughness!==void 0&&(this.roughness=t.roughness),t.metalness!==void 0&&(this.metalness=t.metalness),t.sheen!==void 0&&(this.sheen=t.sheen),t.sheenColor!==void 0&&(this.sheenColor=new ae().setHex(t.sheenColor)),t.sheenRoughness!==void 0&&(this.sheenRoughness=t.sheenRoughness),t.emissive!==void 0&&this.emissive!==void 0&&this.emissive.setHex(t.emissive),t.specular!==void 0&&this.specular!==void 0&&this.specular.setHex(t.specular),t.specularIntensity!==void 0&&(this.specularIntensity=t.specularIntensity),t.specularColor!==void 0&&this.specularColor!==void 0&&this.specularColor.setHex(t.specularColor),t.shininess!==void 0&&(this.shininess=t.shininess),t.clearcoat!==void 0&&(this.clearcoat=t.clearcoat),t.clearcoatRoughness!==void 0&&(this.clearcoatRoughness=t.clearcoatRoughness),t.diffuseRoughness!==void 0&&(this.diffuseRoughness=t.diffuseRoughness),t.dispersion!==void 0&&(this.dispersion=t.dispersion),t.retroreflectivity!==void 0&&(this.retroreflectivity=t.retroreflectivity),t.iridescence!==void 0&&(this.iridescence=t.iridescence),t.iridescenceIOR!==void 0&&(this.iridescenceIOR=t.iridescenceIOR),t.iridescenceThicknessMinimum!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessMinimum),t.iridescenceThicknessMaximum!==void 0&&(this.iridescenceThicknessMaximum=t.iridescenceThicknessMaximum),t.iridescenceThicknessRange!==void 0&&(this.iridescenceThicknessMinimum=t.iridescenceThicknessRange[0],this.iridescenceThicknessMaximum=t.iridescenceThicknessRange[1]),t.transmission!==void 0&&(this.transmission=t.transmission),t.thickness!==void 0&&(this.thickness=t.thickness),t.attenuationDistance!==void 0&&(this.attenuationDistance=t.attenuationDistance),t.attenuationColor!==void 0&&this.attenuationColor!==void 0&&this.attenuationColor.setHex(t.attenuationColor),t.anisotropy!==void 0&&(this.anisotropy=t.anisotropy),t.anisotropyRotation!==void 0&&(this.anisotropyRotation=t.anisotropyRotation),t.fog!==void 0&&(this.fog=t.fog),t.flatShading!==void 0&&(this.flatShading=t.flatShading),t.blending!==void 0&&(this.blending=t.blending),t.combine!==void 0&&(this.combine=t.combine),t.side!==void 0&&(this.side=t.side),t.shadowSide!==void 0&&(this.shadowSide=t.shadowSide),t.opacity!==void 0&&(this.opacity=t.opacity),t.transparent!==void 0&&(this.transparent=t.transparent),t.alphaTest!==void 0&&(this.alphaTest=t.alphaTest),t.alphaHash!==void 0&&(this.alphaHash=t.alphaHash),t.depthFunc!==void 0&&(this.depthFunc=t.depthFunc),t.depthTest!==void 0&&(this.depthTest=t.depthTest),t.depthWrite!==void 0&&(this.depthWrite=t.depthWrite),t.colorWrite!==void 0&&(this.colorWrite=t.colorWrite),t.clippingPlanes!==void 0&&(this.clippingPlanes=t.clippingPlanes.map(n=>new Xn().fromJSON(n))),t.clipIntersection!==void 0&&(this.clipIntersection=t.clipIntersection),t.clipShadows!==void 0&&(this.clipShadows=t.clipShadows),t.depthPacking!==void 0&&(this.depthPacking=t.depthPacking),t.blendSrc!==void 0&&(this.blendSrc=t.blendSrc),t.blendDst!==void 0&&(this.blendDst=t.blendDst),t.blendEquation!==void 0&&(this.blendEquation=t.blendEquation),t.blendSrcAlpha!==void 0&&(this.blendSrcAlpha=t.blendSrcAlpha),t.blendDstAlpha!==void 0&&(this.blendDstAlpha=t.blendDstAlpha),t.blendEquationAlpha!==void 0&&(this.blendEquationAlpha=t.blendEquationAlpha),t.blendColor!==void 0&&this.blendColor!==void 0&&this.blendColor.setHex(t.blendColor),t.blendAlpha!==void 0&&(this.blendAlpha=t.blendAlpha),t.stencilWriteMask!==void 0&&(this.stencilWriteMask=t.stencilWriteMask),t.stencilFunc!==void 0&&(this.stencilFunc=t.stencilFunc),t.stencilRef!==void 0&&(this.stencilRef=t.stencilRef),t.stencilFuncMask!==void 0&&(this.stencilFuncMask=t.stencilFuncMask),t.stencilFail!==void 0&&(this.stencilFail=t.stencilFail),t.stencilZFail!==void 0&&(this.stencilZFail=t.stencilZFail),t.stencilZPass!==void 0&&(this.stencilZPass=t.stencilZPass),t.stencilWrite!==void 0&&(this.stencilWrite=t.stencilWrite),t.wireframe!==void 0&&(this.wireframe=t.wireframe),t.wireframeLinewidth!==void 0&&(this.wireframeLinewidth=t.wireframeLinewidth),t.wireframeLinecap!==void 0&&(this.wireframeLinecap=t.wireframeLinecap),t.wireframeLinejoin!==void 0&&(this.wireframeLinejoin=t.wireframeLinejoin),t.rotation!==void 0&&(this.rotation=t.rotation),t.linewidth!==void 0&&(this.linewidth=t.linewidth),t.linecap!==void 0&&(this.linecap=t.linecap),t.linejoin!==void 0&&(this.linejoin=t.linejoin),t.dashSize!==void 0&&(this.dashSize=t.dashSize),t.gapSize!==void 0&&(this.gapSize=t.gapSize),t.scale!==void 0&&(this.scale=t.scale),t.polygonOffset!==void 0&&(this.polygonOffset=t.polygonOffset),t.polygonOffsetFactor!==void 0&&(this.polygonOffsetFactor=t.polygonOffsetFactor),t.polygonOffsetUnits!==void 0&&(this.polygonOffsetUnits=t.polygonOffsetUnits),t.dithering!==void 0&&(this.dithering=t.dithering),t.alphaToCoverage!==void 0&&(this.alphaToCoverage=t.alphaToCoverage),t.premultipliedAlpha!==void 0&&(this.premultipliedAlpha=t.premultipliedAlpha),t.forceSinglePass!==void 0&&(this.forceSinglePass=t.forceSinglePass),t.allowOverride!==void 0&&(this.allowOverride=t.allowOverride),t.visible!==void 0&&(this.visible=t.visible),t.toneMapped!==void 0&&(this.toneMapped=t.toneMapped),t.userData!==void 0&&(this.userData=t.userData),t.vertexColors!==void 0&&(typeof t.vertexColors=="number"?this.vertexColors=t.vertexColors>0:this.vertexColors=t.vertexColors),t.size!==void 0&&(this.size=t.size),t.sizeAttenuation!==void 0&&(this.sizeAttenuation=t.sizeAttenuation),t.map!==void 0&&(this.map=e[t.map]||null),t.matcap!==void 0&&(this.matcap=e[t.matcap]||null),t.alphaMap!==void 0&&(this.alphaMap=e[t.alphaMap]||null),t.bumpMap!==void 0&&(this.bumpMap=e[t.bumpMap]||null),t.bumpScale!==void 0&&(this.bumpScale=t.bumpScale),t.normalMap!==void 0&&(this.normalMap=e[t.normalMap]||null),t.normalMapType!==void 0&&(this.normalMapType=t.normalMapType),t.normalScale!==void 0){let n=t.normalScale;Array.isArray(n)===!1&&(n=[n,n]),this.normalScale=new ie().fromArray(n)}return t.displacementMap!==void 0&&(this.displacementMap=e[t.displacementMap]||null),t.displacementScale!==void 0&&(this.displacementScale=t.displacementScale),t.displacementBias!==void 0&&(this.displacementBias=t.displacementBias),t.roughnessMap!==void 0&&(this.roughnessMap=e[t.roughnessMap]||null),t.metalnessMap!==void 0&&(this.metalnessMap=e[t.metalnessMap]||null),t.emissiveMap!==void 0&&(this.emissiveMap=e[t.emissiveMap]||null),t.emissiveIntensity!==void 0&&(this.emissiveIntensity=t.emissiveIntensity),t.specularMap!==void 0&&(this.specularMap=e[t.specularMap]||null),t.specularIntensityMap!==void 0&&(this.specularIntensityMap=e[t.specularIntensityMap]||null),t.specularColorMap!==void 0&&(this.specularColorMap=e[t.specularColorMap]||null),t.envMap!==void 0&&(this.envMap=e[t.envMap]||null),t.envMapRotation!==void 0&&this.envMapRotation.fromArray(t.envMapRotation),t.envMapIntensity!==void 0&&(this.envMapIntensity=t.envMapIntensity),t.reflectivity!==void 0&&(this.reflectivity=t.reflectivity),t.refractionRatio!==void 0&&(this.refractionRatio=t.refractionRatio),t.lightMap!==void 0&&(this.lightMap=e[t.lightMap]||null),t.lightMapIntensity!==void 0&&(this.lightMapIntensity=t.lightMapIntensity),t.aoMap!==void 0&&(this.aoMap=e[t.aoMap]||null),t.aoMapIntensity!==void 0&&(this.aoMapIntensity=t.aoMapIntensity),t.gradientMap!==void 0&&(this.gradientMap=e[t.gradientMap]||null),t.clearcoatMap!==void 0&&(this.clearcoatMap=e[t.clearcoatMap]||null),t.clearcoatRoughnessMap!==void 0&&(this.clearcoatRoughnessMap=e[t.clearcoatRoughnessMap]||null),t.clearcoatNormalMap!==void 0&&(this.clearcoatNormalMap=e[t.clearcoatNormalMap]||null),t.clearcoatNormalScale!==void 0&&(this.clearcoatNormalScale=new ie().fromArray(t.clearcoatNormalScale)),t.diffuseRoughnessMap!==void 0&&(this.diffuseRoughnessMap=e[t.diffuseRoughnessMap]||null),t.iridescenceMap!==void 0&&(this.iridescenceMap=e[t.iridescenceMap]||null),t.iridescenceThicknessMap!==void 0&&(this.iridescenceThicknessMap=e[t.iridescenceThicknessMap]||null),t.transmissionMap!==void 0&&(this.transmissionMap=e[t.transmissionMap]||null),t.thicknessMap!==void 0&&(this.thicknessMap=e[t.thicknessMap]||null),t.anisotropyMap!==void 0&&(this.anisotropyMap=e[t.anisotropyMap]||null),t.sheenColorMap!==void 0&&(this.sheenColorMap=e[t.sheenColorMap]||null),t.sheenRoughnessMap!==void 0&&(this.sheenRoughnessMap=e[t.sheenRoughnessMap]||null),this}clone(){return new this.constructor().copy(this)}copy(t){this.name=t.name,this.blending=t.blending,this.side=t.side,this.vertexColors=t.vertexColors,this.opacity=t.opacity,this.transparent=t.transparent,this.blendSrc=t.blendSrc,this.blendDst=t.blendDst,this.blendEquation=t.blendEquation,this.blendSrcAlpha=t.blendSrcAlpha,this.blendDstAlpha=t.blendDstAlpha,this.blendEquationAlpha=t.blendEquationAlpha,this.blendColor.copy(t.blendColor),this.blendAlpha=t.blendAlpha,this.depthFunc=t.depthFunc,this.depthTest=t.depthTest,this.depthWrite=t.depthWrite,this.stencilWriteMask=t.stencilWriteMask,this.stencilFunc=t.stencilFunc,this.stencilRef=t.stencilRef,this.stencilFuncMask=t.stencilFuncMask,this.stencilFail=t.stencilFail,this.stencilZFail=t.stencilZFail,this.stencilZPass=t.stencilZPass,this.stencilWrite=t.stencilWrite;let e=t.clippingPlanes,n=null;if(e!==null){let s=e.length;n=new Array(s);for(let r=0;r!==s;++r)n[r]=e[r].clone()}return this.clippingPlanes=n,this.clipIntersection=t.clipIntersection,this.clipShadows=t.clipShadows,this.shadowSide=t.shadowSide,this.colorWrite=t.colorWrite,this.precision=t.precision,this.polygonOffset=t.polygonOffset,this.polygonOffsetFactor=t.polygonOffsetFactor,this.polygonOffsetUnits=t.polygonOffsetUnits,this.dithering=t.dithering,this.alphaTest=t.alphaTest,this.alphaHash=t.alphaHash,this.alphaToCoverage=t.alphaToCoverage,this.premultipliedAlpha=t.premultipliedAlpha,this.forceSinglePass=t.forceSinglePass,this.allowOverride=t.allowOverride,this.visible=t.visible,this.toneMapped=t.toneMapped,this.userData=JSON.parse(JSON.stringify(t.userData)),this}dispose(){this.dispatchEvent({type:"dispose"})}set needsUpdate(t){t===!0&&this.version++}};var rs=new W,lu=new W,tl=new W,el=new W,er=class{constructor(t=new W,e=new W(0,0,-1)){this.origin=t,this.direction=e}set(t,e){return this.origin.copy(t),this.direction.copy(e),this}copy(t){return this.origin.copy(t.origin),this.direction.copy(t.direction),this}at(t,e){return e.copy(this.origin).addScaledVector(this.direction,t)}lookAt(t){return this.direction.copy(t).sub(this.origin).normalize(),this}recast(t){return this.origin.copy(this.at(t,rs)),this}closestPointToPoint(t,e){e.subVectors(t,this.origin);let n=e.dot(this.direction);return n<0?e.copy(this.origin):e.copy(this.origin).addScaledVector(this.direction,n)}distanceToPoint(t){return Math.sqrt(this.distanceSqToPoint(t))}distanceSqToPoint(t){let e=rs.subVectors(t,this.origin).dot(this.direction);return e<0?this.origin.distanceToSquared(t):(rs.copy(this.origin).addScaledVector(this.direction,e),rs.distanceToSquared(t))}distanceSqToSegment(t,e,n,s){lu.copy(t).add(e).multiplyScalar(.5),tl.copy(e).sub(t).normalize(),el.copy(this.origin).sub(lu);let r=t.distanceTo(e)*.5,o=-this.direction.dot(tl),a=el.dot(this.direction),c=-el.dot(tl),l=el.lengthSq(),u=Math.abs(1-o*o),h,d,f,g;if(u>0)if(h=o*c-a,d=o*a-c,g=r*u,h>=0)if(d>=-g)if(d<=g){let v=1/u;h*=v,d*=v,f=h*(h+o*d+2*a)+d*(o*h+d+2*c)+l}else d=r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*c)+l;else d=-r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*c)+l;else d<=-g?(h=Math.max(0,-(-o*r+a)),d=h>0?-r:Math.min(Math.max(-r,-c),r),f=-h*h+d*(d+2*c)+l):d<=g?(h=0,d=Math.min(Math.max(-r,-c),r),f=d*(d+2*c)+l):(h=Math.max(0,-(o*r+a)),d=h>0?r:Math.min(Math.max(-r,-c),r),f=-h*h+d*(d+2*c)+l);else d=o>0?-r:r,h=Math.max(0,-(o*d+a)),f=-h*h+d*(d+2*c)+l;return n&&n.copy(this.origin).addScaledVector(this.direction,h),s&&s.copy(lu).addScaledVector(tl,d),f}intersectSphere(t,e){if(t.radius<0)return null;rs.subVectors(t.center,this.origin);let n=rs.dot(this.direction),s=rs.dot(rs)-n*n,r=t.radius*t.radius;if(s>r)return null;let o=Math.sqrt(r-s),a=n-o,c=n+o;return c<0?null:a<0?this.at(c,e):this.at(a,e)}intersectsSphere(t){return t.radius<0?!1:this.distanceSqToPoint(t.center)<=t.radius*t.radius}distanceToPlane(t){let e=t.normal.dot(this.direction);if(e===0)return t.distanceToPoint(this.origin)===0?0:null;let n=-(this.origin.dot(t.normal)+t.constant)/e;return n>=0?n:null}intersectPlane(t,e){let n=this.distanceToPlane(t);return n===null?null:this.at(n,e)}intersectsPlane(t){let e=t.distanceToPoint(this.origin);return e===0||t.normal.dot(this.direction)*e<0}intersectBox(t,e){let n,s,r,o,a,c,l=1/this.direction.x,u=1/this.direction.y,h=1/this.direction.z,d=this.origin;return l>=0?(n=(t.min.x-d.x)*l,s=(t.max.x-d.x)*l):(n=(t.max.x-d.x)*l,s=(t.min.x-d.x)*l),u>=0?(r=(t.min.y-d.y)*u,o=(t.max.y-d.y)*u):(r=(t.max.y-d.y)*u,o=(t.min.y-d.y)*u),n>o||r>s||((r>n||isNaN(n))&&(n=r),(o<s||isNaN(s))&&(s=o),h>=0?(a=(t.min.z-d.z)*h,c=(t.max.z-d.z)*h):(a=(t.max.z-d.z)*h,c=(t.min.z-d.z)*h),n>c||a>s)||((a>n||n!==n)&&(n=a),(c<s||s!==s)&&(s=c),s<0)?null:this.at(n>=0?n:s,e)}intersectsBox(t){return this.intersectBox(t,rs)!==null}intersectTriangle(t,e,n,s,r){let o=this.origin,a=this.direction,c=a.x,l=a.y,u=a.z,h=t.x-o.x,d=t.y-o.y,f=t.z-o.z,g=e.x-o.x,v=e.y-o.y,p=e.z-o.z,m=n.x-o.x,y=n.y-o.y,A=n.z-o.z,M=Math.abs(c),R=Math.abs(l),E=Math.abs(u),_,T,O,N,I,V,G,D,H,Y,B,lt;if(M>=R&&M>=E?(O=c,V=h,H=g,lt=m,c>=0?(_=l,T=u,N=d,I=f,G=v,D=p,Y=y,B=A):(_=u,T=l,N=f,I=d,G=p,D=v,Y=A,B=y)):R>=E?(O=l,V=d,H=v,lt=y,l>=0?(_=u,T=c,N=f,I=h,G=p,D=g,Y=A,B=m):(_=c,T=u,N=h,I=f,G=g,D=p,Y=m,B=A)):(O=u,V=f,H=p,lt=A,u>=0?(_=c,T=l,N=h,I=d,G=g,D=v,Y=m,B=y):(_=l,T=c,N=d,I=h,G=v,D=g,Y=y,B=m)),O===0)return null;let Z=_/O,K=T/O,tt=1/O,ut=N-Z*V,ct=I-K*V,j=G-Z*H,gt=D-K*H,it=Y-Z*lt,pt=B-K*lt,mt=it*gt-pt*j,Ft=ut*pt-ct*it,Wt=j*ct-gt*ut;if(s){if(mt<0||Ft<0||Wt<0)return null}else if((mt<0||Ft<0||Wt<0)&&(mt>0||Ft>0||Wt>0))return null;let Vt=mt+Ft+Wt;if(Vt===0)return null;let le=tt*(mt*V+Ft*H+Wt*lt);return(Vt>0?le<0:le>0)?null:this.at(le/Vt,r)}applyMatrix4(t){return this.origin.applyMatrix4(t),this.direction.transformDirection(t),this}equals(t){return t.origin.equals(this.origin)&&t.direction.equals(this.direction)}clone(){return new this.constructor().copy(this)}},hs=class extends cs{constructor(t){super(),this.isMeshBasicMaterial=!0,this.type="MeshBasicMaterial",this.color=new ae(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ls,this.combine=Zl,this.reflectivity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.fog=t.fog,this}},Op=new Xe,js=new er,nl=new tr,Bp=new W,il=new W,sl=new W,rl=new W,cu=new W,ol=new W,kp=new W,al=new W,Rn=class extends Fn{constructor(t=new On,e=new hs){super(),this.isMesh=!0,this.type="Mesh",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.count=1,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}getVertexPosition(t,e){let n=this.geometry,s=n.attributes.position,r=n.morphAttributes.position,o=n.morphTargetsRelative;e.fromBufferAttribute(s,t);let a=this.morphTargetInfluences;if(r&&a){ol.set(0,0,0);for(let c=0,l=r.length;c<l;c++){let u=a[c],h=r[c];u!==0&&(cu.fromBufferAttribute(h,t),o?ol.addScaledVector(cu,u):ol.addScaledVector(cu.sub(e),u))}e.add(ol)}return e}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.material,r=this.matrixWorld;s!==void 0&&(n.boundingSphere===null&&n.computeBoundingSphere(),nl.copy(n.boundingSphere),nl.applyMatrix4(r),js.copy(t.ray).recast(t.near),!(nl.containsPoint(js.origin)===!1&&(js.intersectSphere(nl,Bp)===null||js.origin.distanceToSquared(Bp)>(t.far-t.near)**2))&&(Op.copy(r).invert(),js.copy(t.ray).applyMatrix4(Op),!(n.boundingBox!==null&&js.intersectsBox(n.boundingBox)===!1)&&this._computeIntersections(t,e,js)))}_computeIntersections(t,e,n){let s,r=this.geometry,o=this.material,a=r.index,c=r.attributes.position,l=r.attributes.uv,u=r.attributes.uv1,h=r.attributes.normal,d=r.groups,f=r.drawRange;if(a!==null)if(Array.isArray(o))for(let g=0,v=d.length;g<v;g++){let p=d[g],m=o[p.materialIndex],y=Math.max(p.start,f.start),A=Math.min(a.count,Math.min(p.start+p.count,f.start+f.count));for(let M=y,R=A;M<R;M+=3){let E=a.getX(M),_=a.getX(M+1),T=a.getX(M+2);s=ll(this,m,t,n,l,u,h,E,_,T),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),v=Math.min(a.count,f.start+f.count);for(let p=g,m=v;p<m;p+=3){let y=a.getX(p),A=a.getX(p+1),M=a.getX(p+2);s=ll(this,o,t,n,l,u,h,y,A,M),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}else if(c!==void 0)if(Array.isArray(o))for(let g=0,v=d.length;g<v;g++){let p=d[g],m=o[p.materialIndex],y=Math.max(p.start,f.start),A=Math.min(c.count,Math.min(p.start+p.count,f.start+f.count));for(let M=y,R=A;M<R;M+=3){let E=M,_=M+1,T=M+2;s=ll(this,m,t,n,l,u,h,E,_,T),s&&(s.faceIndex=Math.floor(M/3),s.face.materialIndex=p.materialIndex,e.push(s))}}else{let g=Math.max(0,f.start),v=Math.min(c.count,f.start+f.count);for(let p=g,m=v;p<m;p+=3){let y=p,A=p+1,M=p+2;s=ll(this,o,t,n,l,u,h,y,A,M),s&&(s.faceIndex=Math.floor(p/3),e.push(s))}}}};function Ux(i,t,e,n,s,r,o,a){let c;if(t.side===In?c=n.intersectTriangle(o,r,s,!0,a):c=n.intersectTriangle(s,r,o,t.side===Ri,a),c===null)return null;al.copy(a),al.applyMatrix4(i.matrixWorld);let l=e.ray.origin.distanceTo(al);return l<e.near||l>e.far?null:{distance:l,point:al.clone(),object:i}}function ll(i,t,e,n,s,r,o,a,c,l){i.getVertexPosition(a,il),i.getVertexPosition(c,sl),i.getVertexPosition(l,rl);let u=Ux(i,t,e,n,il,sl,rl,kp);if(u){let h=new W;Ps.getBarycoord(kp,il,sl,rl,h),s&&(u.uv=Ps.getInterpolatedAttribute(s,a,c,l,h,new ie)),r&&(u.uv1=Ps.getInterpolatedAttribute(r,a,c,l,h,new ie)),o&&(u.normal=Ps.getInterpolatedAttribute(o,a,c,l,h,new W),u.normal.dot(n.direction)>0&&u.normal.multiplyScalar(-1));let d={a,b:c,c:l,normal:new W,materialIndex:0};Ps.getNormal(il,sl,rl,d.normal),u.face=d,u.barycoord=h}return u}var Pl=class extends Zn{constructor(t=null,e=1,n=1,s,r,o,a,c,l=An,u=An,h,d){super(null,o,a,c,l,u,s,r,h,d),this.isDataTexture=!0,this.image={data:t,width:e,height:n},this.generateMipmaps=!1,this.flipY=!1,this.unpackAlignment=1}};var Qs=new tr,Fx=new ie(.5,.5),cl=new W,Ls=class{constructor(t=new Xn,e=new Xn,n=new Xn,s=new Xn,r=new Xn,o=new Xn){this.planes=[t,e,n,s,r,o]}set(t,e,n,s,r,o){let a=this.planes;return a[0].copy(t),a[1].copy(e),a[2].copy(n),a[3].copy(s),a[4].copy(r),a[5].copy(o),this}copy(t){let e=this.planes;for(let n=0;n<6;n++)e[n].copy(t.planes[n]);return this}setFromProjectionMatrix(t,e=gi,n=!1){let s=this.planes,r=t.elements,o=r[0],a=r[1],c=r[2],l=r[3],u=r[4],h=r[5],d=r[6],f=r[7],g=r[8],v=r[9],p=r[10],m=r[11],y=r[12],A=r[13],M=r[14],R=r[15];if(s[0].setComponents(l-o,f-u,m-g,R-y).normalize(),s[1].setComponents(l+o,f+u,m+g,R+y).normalize(),s[2].setComponents(l+a,f+h,m+v,R+A).normalize(),s[3].setComponents(l-a,f-h,m-v,R-A).normalize(),n)s[4].setComponents(c,d,p,M).normalize(),s[5].setComponents(l-c,f-d,m-p,R-M).normalize();else if(s[4].setComponents(l-c,f-d,m-p,R-M).normalize(),e===gi)s[5].setComponents(l+c,f+d,m+p,R+M).normalize();else if(e===qr)s[5].setComponents(c,d,p,M).normalize();else throw new Error("THREE.Frustum.setFromProjectionMatrix(): Invalid coordinate system: "+e);return this}intersectsObject(t){if(t.boundingSphere!==void 0)t.boundingSphere===null&&t.computeBoundingSphere(),Qs.copy(t.boundingSphere).applyMatrix4(t.matrixWorld);else{let e=t.geometry;e.boundingSphere===null&&e.computeBoundingSphere(),Qs.copy(e.boundingSphere).applyMatrix4(t.matrixWorld)}return this.intersectsSphere(Qs)}intersectsSprite(t){Qs.center.set(0,0,0);let e=Fx.distanceTo(t.center);return Qs.radius=.7071067811865476+e,Qs.applyMatrix4(t.matrixWorld),this.intersectsSphere(Qs)}intersectsSphere(t){let e=this.planes,n=t.center,s=-t.radius;for(let r=0;r<6;r++)if(e[r].distanceToPoint(n)<s)return!1;return!0}intersectsBox(t){let e=this.planes;for(let n=0;n<6;n++){let s=e[n];if(cl.x=s.normal.x>0?t.max.x:t.min.x,cl.y=s.normal.y>0?t.max.y:t.min.y,cl.z=s.normal.z>0?t.max.z:t.min.z,s.distanceToPoint(cl)<0)return!1}return!0}containsPoint(t){let e=this.planes;for(let n=0;n<6;n++)if(e[n].distanceToPoint(t)<0)return!1;return!0}clone(){return new this.constructor().copy(this)}},zp=new Xe,Il=class i{constructor(){this.coordinateSystem=gi,this._frustums=[],this._count=0}setFromArrayCamera(t){let e=t.cameras,n=this._frustums;for(let s=0;s<e.length;s++){let r=e[s];zp.multiplyMatrices(r.projectionMatrix,r.matrixWorldInverse),n[s]===void 0&&(n[s]=new Ls),n[s].setFromProjectionMatrix(zp,r.coordinateSystem,r.reversedDepth)}return this._count=e.length,this}getFrustum(t){return this._frustums[t]}intersectsObject(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsObject(t))return!0;return!1}intersectsSprite(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSprite(t))return!0;return!1}intersectsSphere(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsSphere(t))return!0;return!1}intersectsBox(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].intersectsBox(t))return!0;return!1}containsPoint(t){let e=this._frustums;for(let n=0;n<this._count;n++)if(e[n].containsPoint(t))return!0;return!1}copy(t){this.coordinateSystem=t.coordinateSystem;let e=this._frustums,n=t._frustums;for(let s=0;s<t._count;s++)e[s]===void 0&&(e[s]=new Ls),e[s].copy(n[s]);return this._count=t._count,this}clone(){return new i().copy(this)}};var Ds=class extends cs{constructor(t){super(),this.isLineBasicMaterial=!0,this.type="LineBasicMaterial",this.color=new ae(16777215),this.map=null,this.linewidth=1,this.linecap="round",this.linejoin="round",this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.linewidth=t.linewidth,this.linecap=t.linecap,this.linejoin=t.linejoin,this.fog=t.fog,this}},Ll=new W,Dl=new W,Vp=new Xe,Io=new er,hl=new tr,hu=new W,Gp=new W,Wo=class extends Fn{constructor(t=new On,e=new Ds){super(),this.isLine=!0,this.type="Line",this.geometry=t,this.material=e,this.morphTargetDictionary=void 0,this.morphTargetInfluences=void 0,this.updateMorphTargets()}copy(t,e){return super.copy(t,e),t.morphTargetInfluences!==void 0?this.morphTargetInfluences=t.morphTargetInfluences.slice():this.morphTargetInfluences=void 0,t.morphTargetDictionary!==void 0?this.morphTargetDictionary=Object.assign({},t.morphTargetDictionary):this.morphTargetDictionary=void 0,this.material=Array.isArray(t.material)?t.material.slice():t.material,this.geometry=t.geometry,this}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[0];for(let s=1,r=e.count;s<r;s++)Ll.fromBufferAttribute(e,s-1),Dl.fromBufferAttribute(e,s),n[s]=n[s-1],n[s]+=Ll.distanceTo(Dl);t.setAttribute("lineDistance",new Pn(n,1))}else Zt("Line.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}intersectsFrustum(t){return t.intersectsObject(this)}raycast(t,e){let n=this.geometry,s=this.matrixWorld,r=t.params.Line.threshold,o=n.drawRange;if(n.boundingSphere===null&&n.computeBoundingSphere(),hl.copy(n.boundingSphere),hl.applyMatrix4(s),hl.radius+=r,t.ray.intersectsSphere(hl)===!1)return;Vp.copy(s).invert(),Io.copy(t.ray).applyMatrix4(Vp);let a=r/((this.scale.x+this.scale.y+this.scale.z)/3),c=a*a,l=this.isLineSegments?2:1,u=n.index,d=n.attributes.position;if(u!==null){let f=Math.max(0,o.start),g=Math.min(u.count,o.start+o.count);for(let v=f,p=g-1;v<p;v+=l){let m=u.getX(v),y=u.getX(v+1),A=ul(this,t,Io,c,m,y,v);A&&e.push(A)}if(this.isLineLoop){let v=u.getX(g-1),p=u.getX(f),m=ul(this,t,Io,c,v,p,g-1);m&&e.push(m)}}else{let f=Math.max(0,o.start),g=Math.min(d.count,o.start+o.count);for(let v=f,p=g-1;v<p;v+=l){let m=ul(this,t,Io,c,v,v+1,v);m&&e.push(m)}if(this.isLineLoop){let v=ul(this,t,Io,c,g-1,f,g-1);v&&e.push(v)}}}updateMorphTargets(){let e=this.geometry.morphAttributes,n=Object.keys(e);if(n.length>0){let s=e[n[0]];if(s!==void 0){this.morphTargetInfluences=[],this.morphTargetDictionary={};for(let r=0,o=s.length;r<o;r++){let a=s[r].name||String(r);this.morphTargetInfluences.push(0),this.morphTargetDictionary[a]=r}}}}};function ul(i,t,e,n,s,r,o){let a=i.geometry.attributes.position;if(Ll.fromBufferAttribute(a,s),Dl.fromBufferAttribute(a,r),e.distanceSqToSegment(Ll,Dl,hu,Gp)>n)return;hu.applyMatrix4(i.matrixWorld);let l=t.ray.origin.distanceTo(hu);if(!(l<t.near||l>t.far))return{distance:l,point:Gp.clone().applyMatrix4(i.matrixWorld),index:o,face:null,faceIndex:null,barycoord:null,object:i}}var Hp=new W,Wp=new W,Kr=class extends Wo{constructor(t,e){super(t,e),this.isLineSegments=!0,this.type="LineSegments"}computeLineDistances(){let t=this.geometry;if(t.index===null){let e=t.attributes.position,n=[];for(let s=0,r=e.count;s<r;s+=2)Hp.fromBufferAttribute(e,s),Wp.fromBufferAttribute(e,s+1),n[s]=s===0?0:n[s-1],n[s+1]=n[s]+Hp.distanceTo(Wp);t.setAttribute("lineDistance",new Pn(n,1))}else Zt("LineSegments.computeLineDistances(): Computation only possible with non-indexed BufferGeometry.");return this}},Xo=class extends Wo{constructor(t,e){super(t,e),this.isLineLoop=!0,this.type="LineLoop"}};var qo=class extends Zn{constructor(t=[],e=rr,n,s,r,o,a,c,l,u){super(t,e,n,s,r,o,a,c,l,u),this.isCubeTexture=!0,this.flipY=!1}get images(){return this.image}set images(t){this.image=t}};var us=class extends Zn{constructor(t,e,n=Ci,s,r,o,a=An,c=An,l,u=as,h=1){if(u!==as&&u!==fs)throw new Error("THREE.DepthTexture: format must be either THREE.DepthFormat or THREE.DepthStencilFormat");let d={width:t,height:e,depth:h};super(d,s,r,o,a,c,u,n,l),this.isDepthTexture=!0,this.flipY=!1,this.generateMipmaps=!1,this.compareFunction=null}copy(t){return super.copy(t),this.source=new Zr(Object.assign({},t.image)),this.compareFunction=t.compareFunction,this}toJSON(t){let e=super.toJSON(t);return e.compareFunction=this.compareFunction,e}},Yo=class extends us{constructor(t,e=Ci,n=rr,s,r,o=An,a=An,c,l=as){let u={width:t,height:t,depth:1},h=[u,u,u,u,u,u];super(t,t,e,n,s,r,o,a,c,l),this.image=h,this.isCubeDepthTexture=!0,this.isCubeTexture=!0}get images(){return this.image}set images(t){this.image=t}},$o=class extends Zn{constructor(t=null){super(),this.sourceTexture=t,this.isExternalTexture=!0}copy(t){return super.copy(t),this.sourceTexture=t.sourceTexture,this}},jr=class i extends On{constructor(t=1,e=1,n=1,s=1,r=1,o=1){super(),this.type="BoxGeometry",this.parameters={width:t,height:e,depth:n,widthSegments:s,heightSegments:r,depthSegments:o};let a=this;s=Math.floor(s),r=Math.floor(r),o=Math.floor(o);let c=[],l=[],u=[],h=[],d=0,f=0;g("z","y","x",-1,-1,n,e,t,o,r,0),g("z","y","x",1,-1,n,e,-t,o,r,1),g("x","z","y",1,1,t,n,e,s,o,2),g("x","z","y",1,-1,t,n,-e,s,o,3),g("x","y","z",1,-1,t,e,n,s,r,4),g("x","y","z",-1,-1,t,e,-n,s,r,5),this.setIndex(c),this.setAttribute("position",new Pn(l,3)),this.setAttribute("normal",new Pn(u,3)),this.setAttribute("uv",new Pn(h,2));function g(v,p,m,y,A,M,R,E,_,T,O){let N=M/_,I=R/T,V=M/2,G=R/2,D=E/2,H=_+1,Y=T+1,B=0,lt=0,Z=new W;for(let K=0;K<Y;K++){let tt=K*I-G;for(let ut=0;ut<H;ut++){let ct=ut*N-V;Z[v]=ct*y,Z[p]=tt*A,Z[m]=D,l.push(Z.x,Z.y,Z.z),Z[v]=0,Z[p]=0,Z[m]=E>0?1:-1,u.push(Z.x,Z.y,Z.z),h.push(ut/_),h.push(1-K/T),B+=1}}for(let K=0;K<T;K++)for(let tt=0;tt<_;tt++){let ut=d+tt+H*K,ct=d+tt+H*(K+1),j=d+(tt+1)+H*(K+1),gt=d+(tt+1)+H*K;c.push(ut,ct,gt),c.push(ct,j,gt),lt+=6}a.addGroup(f,lt,O),f+=lt,d+=B}}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.depth,t.widthSegments,t.heightSegments,t.depthSegments)}};var nr=class i extends On{constructor(t=1,e=1,n=1,s=1){super(),this.type="PlaneGeometry",this.parameters={width:t,height:e,widthSegments:n,heightSegments:s};let r=t/2,o=e/2,a=Math.floor(n),c=Math.floor(s),l=a+1,u=c+1,h=t/a,d=e/c,f=[],g=[],v=[],p=[];for(let m=0;m<u;m++){let y=m*d-o;for(let A=0;A<l;A++){let M=A*h-r;g.push(M,-y,0),v.push(0,0,1),p.push(A/a),p.push(1-m/c)}}for(let m=0;m<c;m++)for(let y=0;y<a;y++){let A=y+l*m,M=y+l*(m+1),R=y+1+l*(m+1),E=y+1+l*m;f.push(A,M,E),f.push(M,R,E)}this.setIndex(f),this.setAttribute("position",new Pn(g,3)),this.setAttribute("normal",new Pn(v,3)),this.setAttribute("uv",new Pn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.width,t.height,t.widthSegments,t.heightSegments)}};var Zo=class i extends On{constructor(t=1,e=32,n=16,s=0,r=Math.PI*2,o=0,a=Math.PI){super(),this.type="SphereGeometry",this.parameters={radius:t,widthSegments:e,heightSegments:n,phiStart:s,phiLength:r,thetaStart:o,thetaLength:a},e=Math.max(3,Math.floor(e)),n=Math.max(2,Math.floor(n));let c=Math.min(o+a,Math.PI),l=0,u=[],h=new W,d=new W,f=[],g=[],v=[],p=[];for(let m=0;m<=n;m++){let y=[],A=m/n,M=o+A*a,R=t*Math.cos(M),E=Math.sqrt(t*t-R*R),_=0;m===0&&o===0?_=.5/e:m===n&&c===Math.PI&&(_=-.5/e);for(let T=0;T<=e;T++){let O=T/e,N=s+O*r;h.x=-E*Math.cos(N),h.y=R,h.z=E*Math.sin(N),g.push(h.x,h.y,h.z),d.copy(h).normalize(),v.push(d.x,d.y,d.z),p.push(O+_,1-A),y.push(l++)}u.push(y)}for(let m=0;m<n;m++)for(let y=0;y<e;y++){let A=u[m][y+1],M=u[m][y],R=u[m+1][y],E=u[m+1][y+1];(m!==0||o>0)&&f.push(A,M,E),(m!==n-1||c<Math.PI)&&f.push(M,R,E)}this.setIndex(f),this.setAttribute("position",new Pn(g,3)),this.setAttribute("normal",new Pn(v,3)),this.setAttribute("uv",new Pn(p,2))}copy(t){return super.copy(t),this.parameters=Object.assign({},t.parameters),this}static fromJSON(t){return new i(t.radius,t.widthSegments,t.heightSegments,t.phiStart,t.phiLength,t.thetaStart,t.thetaLength)}};function ar(i){let t={};for(let e in i){t[e]={};for(let n in i[e]){let s=i[e][n];if(Xp(s))s.isRenderTargetTexture?(Zt("UniformsUtils: Textures of render targets cannot be cloned via cloneUniforms() or mergeUniforms()."),t[e][n]=null):t[e][n]=s.clone();else if(Array.isArray(s))if(Xp(s[0])){let r=[];for(let o=0,a=s.length;o<a;o++)r[o]=s[o].clone();t[e][n]=r}else t[e][n]=s.slice();else t[e][n]=s}}return t}function Bn(i){let t={};for(let e=0;e<i.length;e++){let n=ar(i[e]);for(let s in n)t[s]=n[s]}return t}function Xp(i){return i&&(i.isColor||i.isMatrix3||i.isMatrix4||i.isVector2||i.isVector3||i.isVector4||i.isTexture||i.isQuaternion)}function Ox(i){let t=[];for(let e=0;e<i.length;e++)t.push(i[e].clone());return t}function Zu(i){let t=i.getRenderTarget();return t===null?i.outputColorSpace:t.isXRRenderTarget===!0?t.texture.colorSpace:ye.workingColorSpace}var Bm={clone:ar,merge:Bn},Bx=`void main() {
	gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
}`,kx=`void main() {
	gl_FragColor = vec4( 1.0, 0.0, 0.0, 1.0 );
}`,Wi=class extends cs{constructor(t){super(),this.isShaderMaterial=!0,this.type="ShaderMaterial",this.defines={},this.uniforms={},this.uniformsGroups=[],this.vertexShader=Bx,this.fragmentShader=kx,this.linewidth=1,this.wireframe=!1,this.wireframeLinewidth=1,this.fog=!1,this.lights=!1,this.clipping=!1,this.forceSinglePass=!0,this.extensions={clipCullDistance:!1,multiDraw:!1},this.defaultAttributeValues={color:[1,1,1],uv:[0,0],uv1:[0,0]},this.index0AttributeName=void 0,this.uniformsNeedUpdate=!1,this.glslVersion=null,t!==void 0&&this.setValues(t)}copy(t){return super.copy(t),this.fragmentShader=t.fragmentShader,this.vertexShader=t.vertexShader,this.uniforms=ar(t.uniforms),this.uniformsGroups=Ox(t.uniformsGroups),this.defines=Object.assign({},t.defines),this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.fog=t.fog,this.lights=t.lights,this.clipping=t.clipping,this.extensions=Object.assign({},t.extensions),this.glslVersion=t.glslVersion,this.defaultAttributeValues=Object.assign({},t.defaultAttributeValues),this.index0AttributeName=t.index0AttributeName,this.uniformsNeedUpdate=t.uniformsNeedUpdate,this}toJSON(t){let e=super.toJSON(t);e.glslVersion=this.glslVersion,e.uniforms={};for(let s in this.uniforms){let o=this.uniforms[s].value;o&&o.isTexture?e.uniforms[s]={type:"t",value:o.toJSON(t).uuid}:o&&o.isColor?e.uniforms[s]={type:"c",value:o.getHex()}:o&&o.isVector2?e.uniforms[s]={type:"v2",value:o.toArray()}:o&&o.isVector3?e.uniforms[s]={type:"v3",value:o.toArray()}:o&&o.isVector4?e.uniforms[s]={type:"v4",value:o.toArray()}:o&&o.isMatrix3?e.uniforms[s]={type:"m3",value:o.toArray()}:o&&o.isMatrix4?e.uniforms[s]={type:"m4",value:o.toArray()}:e.uniforms[s]={value:o}}Object.keys(this.defines).length>0&&(e.defines=this.defines),e.vertexShader=this.vertexShader,e.fragmentShader=this.fragmentShader,e.lights=this.lights,e.clipping=this.clipping;let n={};for(let s in this.extensions)this.extensions[s]===!0&&(n[s]=!0);return Object.keys(n).length>0&&(e.extensions=n),e}fromJSON(t,e){if(super.fromJSON(t,e),t.uniforms!==void 0)for(let n in t.uniforms){let s=t.uniforms[n];switch(this.uniforms[n]={},s.type){case"t":this.uniforms[n].value=e[s.value]||null;break;case"c":this.uniforms[n].value=new ae().setHex(s.value);break;case"v2":this.uniforms[n].value=new ie().fromArray(s.value);break;case"v3":this.uniforms[n].value=new W().fromArray(s.value);break;case"v4":this.uniforms[n].value=new $e().fromArray(s.value);break;case"m3":this.uniforms[n].value=new se().fromArray(s.value);break;case"m4":this.uniforms[n].value=new Xe().fromArray(s.value);break;default:this.uniforms[n].value=s.value}}if(t.defines!==void 0&&(this.defines=t.defines),t.vertexShader!==void 0&&(this.vertexShader=t.vertexShader),t.fragmentShader!==void 0&&(this.fragmentShader=t.fragmentShader),t.glslVersion!==void 0&&(this.glslVersion=t.glslVersion),t.extensions!==void 0)for(let n in t.extensions)this.extensions[n]=t.extensions[n];return t.lights!==void 0&&(this.lights=t.lights),t.clipping!==void 0&&(this.clipping=t.clipping),this}},Nl=class extends Wi{constructor(t){super(t),this.isRawShaderMaterial=!0,this.type="RawShaderMaterial"}};var Jo=class extends cs{constructor(t){super(),this.isMeshLambertMaterial=!0,this.type="MeshLambertMaterial",this.color=new ae(16777215),this.map=null,this.lightMap=null,this.lightMapIntensity=1,this.aoMap=null,this.aoMapIntensity=1,this.emissive=new ae(0),this.emissiveIntensity=1,this.emissiveMap=null,this.bumpMap=null,this.bumpScale=1,this.normalMap=null,this.normalMapType=Uc,this.normalScale=new ie(1,1),this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.specularMap=null,this.alphaMap=null,this.envMap=null,this.envMapRotation=new ls,this.combine=Zl,this.reflectivity=1,this.envMapIntensity=1,this.refractionRatio=.98,this.wireframe=!1,this.wireframeLinewidth=1,this.wireframeLinecap="round",this.wireframeLinejoin="round",this.flatShading=!1,this.fog=!0,this.setValues(t)}copy(t){return super.copy(t),this.color.copy(t.color),this.map=t.map,this.lightMap=t.lightMap,this.lightMapIntensity=t.lightMapIntensity,this.aoMap=t.aoMap,this.aoMapIntensity=t.aoMapIntensity,this.emissive.copy(t.emissive),this.emissiveMap=t.emissiveMap,this.emissiveIntensity=t.emissiveIntensity,this.bumpMap=t.bumpMap,this.bumpScale=t.bumpScale,this.normalMap=t.normalMap,this.normalMapType=t.normalMapType,this.normalScale.copy(t.normalScale),this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.specularMap=t.specularMap,this.alphaMap=t.alphaMap,this.envMap=t.envMap,this.envMapRotation.copy(t.envMapRotation),this.combine=t.combine,this.reflectivity=t.reflectivity,this.envMapIntensity=t.envMapIntensity,this.refractionRatio=t.refractionRatio,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this.wireframeLinecap=t.wireframeLinecap,this.wireframeLinejoin=t.wireframeLinejoin,this.flatShading=t.flatShading,this.fog=t.fog,this}},Ul=class extends cs{constructor(t){super(),this.isMeshDepthMaterial=!0,this.type="MeshDepthMaterial",this.depthPacking=Sm,this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.wireframe=!1,this.wireframeLinewidth=1,this.setValues(t)}copy(t){return super.copy(t),this.depthPacking=t.depthPacking,this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this.wireframe=t.wireframe,this.wireframeLinewidth=t.wireframeLinewidth,this}},Fl=class extends cs{constructor(t){super(),this.isMeshDistanceMaterial=!0,this.type="MeshDistanceMaterial",this.map=null,this.alphaMap=null,this.displacementMap=null,this.displacementScale=1,this.displacementBias=0,this.setValues(t)}copy(t){return super.copy(t),this.map=t.map,this.alphaMap=t.alphaMap,this.displacementMap=t.displacementMap,this.displacementScale=t.displacementScale,this.displacementBias=t.displacementBias,this}};function Vr(i,t){return!i||i.constructor===t?i:typeof t.BYTES_PER_ELEMENT=="number"?new t(i):Array.prototype.slice.call(i)}function dl(i){return i!==void 0&&i.inTangents!==void 0&&i.outTangents!==void 0}var Ns=class{constructor(t,e,n,s){this.parameterPositions=t,this._cachedIndex=0,this.resultBuffer=s!==void 0?s:new e.constructor(n),this.sampleValues=e,this.valueSize=n,this.settings=null,this.DefaultSettings_={}}evaluate(t){let e=this.parameterPositions,n=this._cachedIndex,s=e[n],r=e[n-1];n:{t:{let o;e:{i:if(!(t<s)){for(let a=n+2;;){if(s===void 0){if(t<r)break i;return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}if(n===a)break;if(r=s,s=e[++n],t<s)break t}o=e.length;break e}if(!(t>=r)){let a=e[1];t<a&&(n=2,r=a);for(let c=n-2;;){if(r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(n===c)break;if(s=r,r=e[--n-1],t>=r)break t}o=n,n=0;break e}break n}for(;n<o;){let a=n+o>>>1;t<e[a]?o=a:n=a+1}if(s=e[n],r=e[n-1],r===void 0)return this._cachedIndex=0,this.copySampleValue_(0);if(s===void 0)return n=e.length,this._cachedIndex=n,this.copySampleValue_(n-1)}this._cachedIndex=n,this.intervalChanged_(n,r,s)}return this.interpolate_(n,r,t,s)}getSettings_(){return this.settings||this.DefaultSettings_}copySampleValue_(t){let e=this.resultBuffer,n=this.sampleValues,s=this.valueSize,r=t*s;for(let o=0;o!==s;++o)e[o]=n[r+o];return e}interpolate_(){throw new Error("THREE.Interpolant: Call to abstract method.")}intervalChanged_(){}},Ol=class extends Ns{constructor(t,e,n,s){super(t,e,n,s),this._weightPrev=-0,this._offsetPrev=-0,this._weightNext=-0,this._offsetNext=-0,this.DefaultSettings_={endingStart:fu,endingEnd:fu}}intervalChanged_(t,e,n){let s=this.parameterPositions,r=t-2,o=t+1,a=s[r],c=s[o];if(a===void 0)switch(this.getSettings_().endingStart){case pu:r=t,a=2*e-n;break;case mu:r=s.length-2,a=e+s[r]-s[r+1];break;default:r=t,a=n}if(c===void 0)switch(this.getSettings_().endingEnd){case pu:o=t,c=2*n-e;break;case mu:o=1,c=n+s[1]-s[0];break;default:o=t-1,c=e}let l=(n-e)*.5,u=this.valueSize;this._weightPrev=l/(e-a),this._weightNext=l/(c-n),this._offsetPrev=r*u,this._offsetNext=o*u}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=t*a,l=c-a,u=this._offsetPrev,h=this._offsetNext,d=this._weightPrev,f=this._weightNext,g=(n-e)/(s-e),v=g*g,p=v*g,m=-d*p+2*d*v-d*g,y=(1+d)*p+(-1.5-2*d)*v+(-.5+d)*g+1,A=(-1-f)*p+(1.5+f)*v+.5*g,M=f*p-f*v;for(let R=0;R!==a;++R)r[R]=m*o[u+R]+y*o[l+R]+A*o[c+R]+M*o[h+R];return r}},Bl=class extends Ns{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=t*a,l=c-a,u=(n-e)/(s-e),h=1-u;for(let d=0;d!==a;++d)r[d]=o[l+d]*h+o[c+d]*u;return r}},kl=class extends Ns{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t){return this.copySampleValue_(t-1)}},zl=class extends Ns{interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=t*a,l=c-a,u=this.inTangents,h=this.outTangents;if(!u||!h){let g=(n-e)/(s-e),v=1-g;for(let p=0;p!==a;++p)r[p]=o[l+p]*v+o[c+p]*g;return r}let d=a*2,f=t-1;for(let g=0;g!==a;++g){let v=o[l+g],p=o[c+g],m=f*d+g*2,y=h[m],A=h[m+1],M=t*d+g*2,R=u[M],E=u[M+1],_=Vx(n,e,y,R,s);r[g]=km(_,v,A,E,p)}return r}};function km(i,t,e,n,s){let r=1-i;return r*r*r*t+3*r*r*i*e+3*r*i*i*n+i*i*i*s}function zx(i,t,e,n,s){let r=1-i;return 3*r*r*(e-t)+6*r*i*(n-e)+3*i*i*(s-n)}function Vx(i,t,e,n,s){let r=(i-t)/(s-t);for(let o=0;o<8;o++){let a=km(r,t,e,n,s)-i;if(Math.abs(a)<1e-10)break;let c=zx(r,t,e,n,s);if(Math.abs(c)<1e-10)break;r=Math.max(0,Math.min(1,r-a/c))}return r}var hi=class{constructor(t,e,n,s){if(t===void 0)throw new Error("THREE.KeyframeTrack: track name is undefined");if(e===void 0||e.length===0)throw new Error("THREE.KeyframeTrack: no keyframes in track named "+t);this.name=t,this.times=Vr(e,this.TimeBufferType),this.values=Vr(n,this.ValueBufferType),this.setInterpolation(s||this.DefaultInterpolation)}static toJSON(t){let e=t.constructor,n;if(e.toJSON!==this.toJSON)n=e.toJSON(t);else{n={name:t.name,times:Vr(t.times,Array),values:Vr(t.values,Array)};let s=t.getInterpolation();s!==t.DefaultInterpolation&&(n.interpolation=s),dl(t.settings)&&(n.settings={inTangents:Vr(t.settings.inTangents,Array),outTangents:Vr(t.settings.outTangents,Array)})}return n.type=t.ValueTypeName,n}InterpolantFactoryMethodDiscrete(t){return new kl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodLinear(t){return new Bl(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodSmooth(t){return new Ol(this.times,this.values,this.getValueSize(),t)}InterpolantFactoryMethodBezier(t){let e=new zl(this.times,this.values,this.getValueSize(),t);return this.settings&&(e.inTangents=this.settings.inTangents,e.outTangents=this.settings.outTangents),e}setInterpolation(t){let e;switch(t){case Uo:e=this.InterpolantFactoryMethodDiscrete;break;case Tl:e=this.InterpolantFactoryMethodLinear;break;case ml:e=this.InterpolantFactoryMethodSmooth;break;case du:e=this.InterpolantFactoryMethodBezier;break}if(e===void 0){let n="unsupported interpolation for "+this.ValueTypeName+" keyframe track named "+this.name;if(this.createInterpolant===void 0)if(t!==this.DefaultInterpolation)this.setInterpolation(this.DefaultInterpolation);else throw new Error(n);return Zt("KeyframeTrack:",n),this}return this.createInterpolant=e,this}getInterpolation(){switch(this.createInterpolant){case this.InterpolantFactoryMethodDiscrete:return Uo;case this.InterpolantFactoryMethodLinear:return Tl;case this.InterpolantFactoryMethodSmooth:return ml;case this.InterpolantFactoryMethodBezier:return du}}getValueSize(){return this.values.length/this.times.length}shift(t){if(t!==0){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]+=t;dl(this.settings)&&(qp(this.settings.inTangents,t),qp(this.settings.outTangents,t))}return this}scale(t){if(t!==1){let e=this.times;for(let n=0,s=e.length;n!==s;++n)e[n]*=t;dl(this.settings)&&(Yp(this.settings.inTangents,t),Yp(this.settings.outTangents,t))}return this}trim(t,e){let n=this.times,s=n.length,r=0,o=s-1;for(;r!==s&&n[r]<t;)++r;for(;o!==-1&&n[o]>e;)--o;if(++o,r!==0||o!==s){r>=o&&(o=Math.max(o,1),r=o-1);let a=this.getValueSize();this.times=n.slice(r,o),this.values=this.values.slice(r*a,o*a)}return this}validate(){let t=!0,e=this.getValueSize();e-Math.floor(e)!==0&&(ne("KeyframeTrack: Invalid value size in track.",this),t=!1);let n=this.times,s=this.values,r=n.length;r===0&&(ne("KeyframeTrack: Track is empty.",this),t=!1);let o=null;for(let a=0;a!==r;a++){let c=n[a];if(typeof c=="number"&&isNaN(c)){ne("KeyframeTrack: Time is not a valid number.",this,a,c),t=!1;break}if(o!==null&&o>c){ne("KeyframeTrack: Out of order keys.",this,a,c,o),t=!1;break}o=c}if(s!==void 0&&ix(s))for(let a=0,c=s.length;a!==c;++a){let l=s[a];if(isNaN(l)){ne("KeyframeTrack: Value is not a valid number.",this,a,l),t=!1;break}}return t}optimize(){let t=this.times.slice(),e=this.values.slice(),n=this.getValueSize(),s=this.getInterpolation()===ml,r=t.length-1,o=1;for(let a=1;a<r;++a){let c=!1,l=t[a],u=t[a+1];if(l!==u&&(a!==1||l!==t[0]))if(s)c=!0;else{let h=a*n,d=h-n,f=h+n;for(let g=0;g!==n;++g){let v=e[h+g];if(v!==e[d+g]||v!==e[f+g]){c=!0;break}}}if(c){if(a!==o){t[o]=t[a];let h=a*n,d=o*n;for(let f=0;f!==n;++f)e[d+f]=e[h+f]}++o}}if(r>0){t[o]=t[r];for(let a=r*n,c=o*n,l=0;l!==n;++l)e[c+l]=e[a+l];++o}return o!==t.length?(this.times=t.slice(0,o),this.values=e.slice(0,o*n)):(this.times=t,this.values=e),this}clone(){let t=this.times.slice(),e=this.values.slice(),n=this.constructor,s=new n(this.name,t,e);return s.createInterpolant=this.createInterpolant,dl(this.settings)&&(s.settings={inTangents:this.settings.inTangents.slice(),outTangents:this.settings.outTangents.slice()}),s}};function qp(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]+=t}function Yp(i,t){for(let e=0,n=i.length;e!==n;e+=2)i[e]*=t}hi.prototype.ValueTypeName="";hi.prototype.TimeBufferType=Float32Array;hi.prototype.ValueBufferType=Float32Array;hi.prototype.DefaultInterpolation=Tl;var Us=class extends hi{constructor(t,e,n){super(t,e,n)}};Us.prototype.ValueTypeName="bool";Us.prototype.ValueBufferType=Array;Us.prototype.DefaultInterpolation=Uo;Us.prototype.InterpolantFactoryMethodLinear=void 0;Us.prototype.InterpolantFactoryMethodSmooth=void 0;var Vl=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};Vl.prototype.ValueTypeName="color";var Gl=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};Gl.prototype.ValueTypeName="number";var Hl=class extends Ns{constructor(t,e,n,s){super(t,e,n,s)}interpolate_(t,e,n,s){let r=this.resultBuffer,o=this.sampleValues,a=this.valueSize,c=(n-e)/(s-e),l=t*a;for(let u=l+a;l!==u;l+=4)li.slerpFlat(r,0,o,l-a,o,l,c);return r}},Ko=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}InterpolantFactoryMethodLinear(t){return new Hl(this.times,this.values,this.getValueSize(),t)}};Ko.prototype.ValueTypeName="quaternion";Ko.prototype.InterpolantFactoryMethodSmooth=void 0;var Fs=class extends hi{constructor(t,e,n){super(t,e,n)}};Fs.prototype.ValueTypeName="string";Fs.prototype.ValueBufferType=Array;Fs.prototype.DefaultInterpolation=Uo;Fs.prototype.InterpolantFactoryMethodLinear=void 0;Fs.prototype.InterpolantFactoryMethodSmooth=void 0;var Wl=class extends hi{constructor(t,e,n,s){super(t,e,n,s)}};Wl.prototype.ValueTypeName="vector";var Xl=class{constructor(t,e,n){let s=this,r=!1,o=0,a=0,c,l=[];this.onStart=void 0,this.onLoad=t,this.onProgress=e,this.onError=n,this._abortController=null,this.itemStart=function(u){a++,r===!1&&s.onStart!==void 0&&s.onStart(u,o,a),r=!0},this.itemEnd=function(u){o++,s.onProgress!==void 0&&s.onProgress(u,o,a),o===a&&(r=!1,s.onLoad!==void 0&&s.onLoad())},this.itemError=function(u){s.onError!==void 0&&s.onError(u)},this.resolveURL=function(u){return u=u.normalize("NFC"),c?c(u):u},this.setURLModifier=function(u){return c=u,this},this.addHandler=function(u,h){return l.push(u,h),this},this.removeHandler=function(u){let h=l.indexOf(u);return h!==-1&&l.splice(h,2),this},this.getHandler=function(u){for(let h=0,d=l.length;h<d;h+=2){let f=l[h],g=l[h+1];if(f.global&&(f.lastIndex=0),f.test(u))return g}return null},this.abort=function(){return this.abortController.abort(),this._abortController=null,this}}get abortController(){return this._abortController||(this._abortController=new AbortController),this._abortController}},zm=new Xl,ql=class{constructor(t){this.manager=t!==void 0?t:zm,this.crossOrigin="anonymous",this.withCredentials=!1,this.path="",this.resourcePath="",this.requestHeader={},this.priority="auto",this.cache="default",typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}load(){}loadAsync(t,e){let n=this;return new Promise(function(s,r){n.load(t,s,e,r)})}parse(){}setCrossOrigin(t){return this.crossOrigin=t,this}setWithCredentials(t){return this.withCredentials=t,this}setPath(t){return this.path=t,this}setResourcePath(t){return this.resourcePath=t,this}setRequestHeader(t){return this.requestHeader=t,this}setPriority(t){return this.priority=t,this}setCache(t){return this.cache=t,this}abort(){return this}};ql.DEFAULT_MATERIAL_NAME="__DEFAULT";var jo=class extends Fn{static registerNode(t){this.prototype._lightNode=t}constructor(t,e=1){super(),this.isLight=!0,this.type="Light",this.color=new ae(t),this.intensity=e}copy(t,e){return super.copy(t,e),this.color.copy(t.color),this.intensity=t.intensity,this}toJSON(t){let e=super.toJSON(t);return e.object.color=this.color.getHex(),e.object.intensity=this.intensity,e}};var uu=new Xe,$p=new W,Zp=new W,Yl=class{constructor(t){this.camera=t,this.intensity=1,this.bias=0,this.biasNode=null,this.normalBias=0,this.radius=1,this.blurSamples=8,this.mapSize=new ie(512,512),this.mapType=Jn,this.map=null,this.mapPass=null,this.matrix=new Xe,this.autoUpdate=!0,this.needsUpdate=!1,this._frustum=new Ls,this._frameExtents=new ie(1,1),this._viewportCount=1,this._viewports=[new $e(0,0,1,1)]}getViewportCount(){return this._viewportCount}getCamera(){return this.camera}getFrustum(){return this._frustum}updateMatrices(t){let e=this.camera;$p.setFromMatrixPosition(t.matrixWorld),e.position.copy($p),Zp.setFromMatrixPosition(t.target.matrixWorld),e.lookAt(Zp),e.updateMatrixWorld(),this._updateMatrix(e,this.matrix,this._frustum)}_updateMatrix(t,e,n,s){uu.multiplyMatrices(t.projectionMatrix,t.matrixWorldInverse),n.setFromProjectionMatrix(uu,t.coordinateSystem,t.reversedDepth);let r=this._frameExtents,o=s?s.z/r.x:1,a=s?s.w/r.y:1,c=s?s.x/r.x:0,l=s?s.y/r.y:0;t.coordinateSystem===qr||t.reversedDepth?e.set(.5*o,0,0,.5*o+c,0,.5*a,0,.5*a+l,0,0,1,0,0,0,0,1):e.set(.5*o,0,0,.5*o+c,0,.5*a,0,.5*a+l,0,0,.5,.5,0,0,0,1),e.multiply(uu)}getViewport(t){return this._viewports[t]}getFrameExtents(){return this._frameExtents}dispose(){this.map&&this.map.dispose(),this.mapPass&&this.mapPass.dispose()}copy(t){return this.camera=t.camera.clone(),this.intensity=t.intensity,this.bias=t.bias,this.radius=t.radius,this.autoUpdate=t.autoUpdate,this.needsUpdate=t.needsUpdate,this.normalBias=t.normalBias,this.blurSamples=t.blurSamples,this.mapSize.copy(t.mapSize),this.mapType=t.mapType,this.biasNode=t.biasNode,this}clone(){return new this.constructor().copy(this)}toJSON(){let t={};return t.intensity=this.intensity,t.bias=this.bias,t.normalBias=this.normalBias,t.radius=this.radius,t.blurSamples=this.blurSamples,t.mapSize=this.mapSize.toArray(),t.mapType=this.mapType,t.camera=this.camera.toJSON(!1).object,delete t.camera.matrix,t}},fl=new W,pl=new li,Gi=new W,Qo=class extends Fn{constructor(){super(),this.isCamera=!0,this.type="Camera",this.matrixWorldInverse=new Xe,this.projectionMatrix=new Xe,this.projectionMatrixInverse=new Xe,this.coordinateSystem=gi,this._reversedDepth=!1}get reversedDepth(){return this._reversedDepth}copy(t,e){return super.copy(t,e),this.matrixWorldInverse.copy(t.matrixWorldInverse),this.projectionMatrix.copy(t.projectionMatrix),this.projectionMatrixInverse.copy(t.projectionMatrixInverse),this.coordinateSystem=t.coordinateSystem,this}getWorldDirection(t){return super.getWorldDirection(t).negate()}updateMatrixWorld(t){super.updateMatrixWorld(t),this.matrixWorld.decompose(fl,pl,Gi),Gi.x===1&&Gi.y===1&&Gi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(fl,pl,Gi.set(1,1,1)).invert()}updateWorldMatrix(t,e,n=!1){super.updateWorldMatrix(t,e,n),this.matrixWorld.decompose(fl,pl,Gi),Gi.x===1&&Gi.y===1&&Gi.z===1?this.matrixWorldInverse.copy(this.matrixWorld).invert():this.matrixWorldInverse.compose(fl,pl,Gi.set(1,1,1)).invert()}clone(){return new this.constructor().copy(this)}},Cs=new W,Jp=new ie,Kp=new ie,qn=class extends Qo{constructor(t=50,e=1,n=.1,s=2e3){super(),this.isPerspectiveCamera=!0,this.type="PerspectiveCamera",this.fov=t,this.zoom=1,this.near=n,this.far=s,this.focus=10,this.aspect=e,this.view=null,this.filmGauge=35,this.filmOffset=0,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.fov=t.fov,this.zoom=t.zoom,this.near=t.near,this.far=t.far,this.focus=t.focus,this.aspect=t.aspect,this.view=t.view===null?null:Object.assign({},t.view),this.filmGauge=t.filmGauge,this.filmOffset=t.filmOffset,this}setFocalLength(t){let e=.5*this.getFilmHeight()/t;this.fov=$r*2*Math.atan(e),this.updateProjectionMatrix()}getFocalLength(){let t=Math.tan(Do*.5*this.fov);return .5*this.getFilmHeight()/t}getEffectiveFOV(){return $r*2*Math.atan(Math.tan(Do*.5*this.fov)/this.zoom)}getFilmWidth(){return this.filmGauge*Math.min(this.aspect,1)}getFilmHeight(){return this.filmGauge/Math.max(this.aspect,1)}getViewBounds(t,e,n){Cs.set(-1,-1,.5).applyMatrix4(this.projectionMatrixInverse),e.set(Cs.x,Cs.y).multiplyScalar(-t/Cs.z),Cs.set(1,1,.5).applyMatrix4(this.projectionMatrixInverse),n.set(Cs.x,Cs.y).multiplyScalar(-t/Cs.z)}getViewSize(t,e){return this.getViewBounds(t,Jp,Kp),e.subVectors(Kp,Jp)}setViewOffset(t,e,n,s,r,o){this.aspect=t/e,this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=this.near,e=t*Math.tan(Do*.5*this.fov)/this.zoom,n=2*e,s=this.aspect*n,r=-.5*s,o=this.view;if(this.view!==null&&this.view.enabled){let c=o.fullWidth,l=o.fullHeight;r+=o.offsetX*s/c,e-=o.offsetY*n/l,s*=o.width/c,n*=o.height/l}let a=this.filmOffset;a!==0&&(r+=t*a/this.getFilmWidth()),this.projectionMatrix.makePerspective(r,r+s,e,e-n,t,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.fov=this.fov,e.object.zoom=this.zoom,e.object.near=this.near,e.object.far=this.far,e.object.focus=this.focus,e.object.aspect=this.aspect,this.view!==null&&(e.object.view=Object.assign({},this.view)),e.object.filmGauge=this.filmGauge,e.object.filmOffset=this.filmOffset,e}};var ta=class extends Qo{constructor(t=-1,e=1,n=1,s=-1,r=.1,o=2e3){super(),this.isOrthographicCamera=!0,this.type="OrthographicCamera",this.zoom=1,this.view=null,this.left=t,this.right=e,this.top=n,this.bottom=s,this.near=r,this.far=o,this.updateProjectionMatrix()}copy(t,e){return super.copy(t,e),this.left=t.left,this.right=t.right,this.top=t.top,this.bottom=t.bottom,this.near=t.near,this.far=t.far,this.zoom=t.zoom,this.view=t.view===null?null:Object.assign({},t.view),this}setViewOffset(t,e,n,s,r,o){this.view===null&&(this.view={enabled:!0,fullWidth:1,fullHeight:1,offsetX:0,offsetY:0,width:1,height:1}),this.view.enabled=!0,this.view.fullWidth=t,this.view.fullHeight=e,this.view.offsetX=n,this.view.offsetY=s,this.view.width=r,this.view.height=o,this.updateProjectionMatrix()}clearViewOffset(){this.view!==null&&(this.view.enabled=!1),this.updateProjectionMatrix()}updateProjectionMatrix(){let t=(this.right-this.left)/(2*this.zoom),e=(this.top-this.bottom)/(2*this.zoom),n=(this.right+this.left)/2,s=(this.top+this.bottom)/2,r=n-t,o=n+t,a=s+e,c=s-e;if(this.view!==null&&this.view.enabled){let l=(this.right-this.left)/this.view.fullWidth/this.zoom,u=(this.top-this.bottom)/this.view.fullHeight/this.zoom;r+=l*this.view.offsetX,o=r+l*this.view.width,a-=u*this.view.offsetY,c=a-u*this.view.height}this.projectionMatrix.makeOrthographic(r,o,a,c,this.near,this.far,this.coordinateSystem,this.reversedDepth),this.projectionMatrixInverse.copy(this.projectionMatrix).invert()}toJSON(t){let e=super.toJSON(t);return e.object.zoom=this.zoom,e.object.left=this.left,e.object.right=this.right,e.object.top=this.top,e.object.bottom=this.bottom,e.object.near=this.near,e.object.far=this.far,this.view!==null&&(e.object.view=Object.assign({},this.view)),e}},gu=class extends Yl{constructor(){super(new ta(-5,5,5,-5,.5,500)),this.isDirectionalLightShadow=!0}},ea=class extends jo{constructor(t,e){super(t,e),this.isDirectionalLight=!0,this.type="DirectionalLight",this.position.copy(Fn.DEFAULT_UP),this.updateMatrix(),this.target=new Fn,this.shadow=new gu}dispose(){super.dispose(),this.shadow.dispose()}copy(t){return super.copy(t),this.target=t.target.clone(),this.shadow=t.shadow.clone(),this}toJSON(t){let e=super.toJSON(t);return e.object.shadow=this.shadow.toJSON(),e.object.target=this.target.uuid,e}},na=class extends jo{constructor(t,e){super(t,e),this.isAmbientLight=!0,this.type="AmbientLight"}};var Gr=-90,Hr=1,Qr=class extends Fn{constructor(t,e,n){super(),this.type="CubeCamera",this.renderTarget=n,this.coordinateSystem=null,this.activeMipmapLevel=0;let s=new qn(Gr,Hr,t,e);s.layers=this.layers,this.add(s);let r=new qn(Gr,Hr,t,e);r.layers=this.layers,this.add(r);let o=new qn(Gr,Hr,t,e);o.layers=this.layers,this.add(o);let a=new qn(Gr,Hr,t,e);a.layers=this.layers,this.add(a);let c=new qn(Gr,Hr,t,e);c.layers=this.layers,this.add(c);let l=new qn(Gr,Hr,t,e);l.layers=this.layers,this.add(l)}updateCoordinateSystem(){let t=this.coordinateSystem,e=this.children.concat(),[n,s,r,o,a,c]=e;for(let l of e)this.remove(l);if(t===gi)n.up.set(0,1,0),n.lookAt(1,0,0),s.up.set(0,1,0),s.lookAt(-1,0,0),r.up.set(0,0,-1),r.lookAt(0,1,0),o.up.set(0,0,1),o.lookAt(0,-1,0),a.up.set(0,1,0),a.lookAt(0,0,1),c.up.set(0,1,0),c.lookAt(0,0,-1);else if(t===qr)n.up.set(0,-1,0),n.lookAt(-1,0,0),s.up.set(0,-1,0),s.lookAt(1,0,0),r.up.set(0,0,1),r.lookAt(0,1,0),o.up.set(0,0,-1),o.lookAt(0,-1,0),a.up.set(0,-1,0),a.lookAt(0,0,1),c.up.set(0,-1,0),c.lookAt(0,0,-1);else throw new Error("THREE.CubeCamera.updateCoordinateSystem(): Invalid coordinate system: "+t);for(let l of e)this.add(l),l.updateMatrixWorld()}update(t,e){this.parent===null&&this.updateMatrixWorld();let{renderTarget:n,activeMipmapLevel:s}=this;this.coordinateSystem!==t.coordinateSystem&&(this.coordinateSystem=t.coordinateSystem,this.updateCoordinateSystem());let[r,o,a,c,l,u]=this.children,h=t.getRenderTarget(),d=t.getActiveCubeFace(),f=t.getActiveMipmapLevel(),g=t.xr.enabled;t.xr.enabled=!1;let v=n.texture.mipmapsAutoUpdate;n.texture.mipmapsAutoUpdate=!1;let p=!1;t.isWebGLRenderer===!0?p=t.state.buffers.depth.getReversed():p=t.reversedDepthBuffer,t.setRenderTarget(n,0,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,r),t.setRenderTarget(n,1,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,o),t.setRenderTarget(n,2,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,a),t.setRenderTarget(n,3,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,c),t.setRenderTarget(n,4,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,l),n.texture.mipmapsAutoUpdate=v,t.setRenderTarget(n,5,s),p&&t.autoClear===!1&&t.clearDepth(),t.render(e,u),t.setRenderTarget(h,d,f),t.xr.enabled=g,n.texture.needsPMREMUpdate=!0}},$l=class extends qn{constructor(t=[]){super(),this.isArrayCamera=!0,this.isMultiViewCamera=!1,this.cameras=t,this.perCameraFrustumCulled=!1}};var Ju="\\[\\]\\.:\\/",Gx=new RegExp("["+Ju+"]","g"),Ku="[^"+Ju+"]",Hx="[^"+Ju.replace("\\.","")+"]",Wx=/((?:WC+[\/:])*)/.source.replace("WC",Ku),Xx=/(WCOD+)?/.source.replace("WCOD",Hx),qx=/(?:\.(WC+)(?:\[(.+)\])?)?/.source.replace("WC",Ku),Yx=/\.(WC+)(?:\[(.+)\])?/.source.replace("WC",Ku),$x=new RegExp("^"+Wx+Xx+qx+Yx+"$"),Zx=["material","materials","bones","map"],_u=class{constructor(t,e,n){let s=n||We.parseTrackName(e);this._targetGroup=t,this._bindings=t.subscribe_(e,s)}getValue(t,e){this.bind();let n=this._targetGroup.nCachedObjects_,s=this._bindings[n];s!==void 0&&s.getValue(t,e)}setValue(t,e){let n=this._bindings;for(let s=this._targetGroup.nCachedObjects_,r=n.length;s!==r;++s)n[s].setValue(t,e)}bind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].bind()}unbind(){let t=this._bindings;for(let e=this._targetGroup.nCachedObjects_,n=t.length;e!==n;++e)t[e].unbind()}},We=class i{constructor(t,e,n){this.path=e,this.parsedPath=n||i.parseTrackName(e),this.node=i.findNode(t,this.parsedPath.nodeName),this.rootNode=t,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}static create(t,e,n){return t&&t.isAnimationObjectGroup?new i.Composite(t,e,n):new i(t,e,n)}static sanitizeNodeName(t){return t.replace(/\s/g,"_").replace(Gx,"")}static parseTrackName(t){let e=$x.exec(t);if(e===null)throw new Error("THREE.PropertyBinding: Cannot parse trackName: "+t);let n={nodeName:e[2],objectName:e[3],objectIndex:e[4],propertyName:e[5],propertyIndex:e[6]},s=n.nodeName&&n.nodeName.lastIndexOf(".");if(s!==void 0&&s!==-1){let r=n.nodeName.substring(s+1);Zx.indexOf(r)!==-1&&(n.nodeName=n.nodeName.substring(0,s),n.objectName=r)}if(n.propertyName===null||n.propertyName.length===0)throw new Error("THREE.PropertyBinding: can not parse propertyName from trackName: "+t);return n}static findNode(t,e){if(e===void 0||e===""||e==="."||e===-1||e===t.name||e===t.uuid)return t;if(t.skeleton){let n=t.skeleton.getBoneByName(e);if(n!==void 0)return n}if(t.children){let n=function(r){for(let o=0;o<r.length;o++){let a=r[o];if(a.name===e||a.uuid===e)return a;let c=n(a.children);if(c)return c}return null},s=n(t.children);if(s)return s}return null}_getValue_unavailable(){}_setValue_unavailable(){}_getValue_direct(t,e){t[e]=this.targetObject[this.propertyName]}_getValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)t[e++]=n[s]}_getValue_arrayElement(t,e){t[e]=this.resolvedProperty[this.propertyIndex]}_getValue_toArray(t,e){this.resolvedProperty.toArray(t,e)}_setValue_direct(t,e){this.targetObject[this.propertyName]=t[e]}_setValue_direct_setNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.needsUpdate=!0}_setValue_direct_setMatrixWorldNeedsUpdate(t,e){this.targetObject[this.propertyName]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_array(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++]}_setValue_array_setNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.needsUpdate=!0}_setValue_array_setMatrixWorldNeedsUpdate(t,e){let n=this.resolvedProperty;for(let s=0,r=n.length;s!==r;++s)n[s]=t[e++];this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_arrayElement(t,e){this.resolvedProperty[this.propertyIndex]=t[e]}_setValue_arrayElement_setNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.needsUpdate=!0}_setValue_arrayElement_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty[this.propertyIndex]=t[e],this.targetObject.matrixWorldNeedsUpdate=!0}_setValue_fromArray(t,e){this.resolvedProperty.fromArray(t,e)}_setValue_fromArray_setNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.needsUpdate=!0}_setValue_fromArray_setMatrixWorldNeedsUpdate(t,e){this.resolvedProperty.fromArray(t,e),this.targetObject.matrixWorldNeedsUpdate=!0}_getValue_unbound(t,e){this.bind(),this.getValue(t,e)}_setValue_unbound(t,e){this.bind(),this.setValue(t,e)}bind(){let t=this.node,e=this.parsedPath,n=e.objectName,s=e.propertyName,r=e.propertyIndex;if(t||(t=i.findNode(this.rootNode,e.nodeName),this.node=t),this.getValue=this._getValue_unavailable,this.setValue=this._setValue_unavailable,!t){Zt("PropertyBinding: No target node found for track: "+this.path+".");return}if(n){let l=e.objectIndex;switch(n){case"materials":if(!t.material){ne("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.materials){ne("PropertyBinding: Can not bind to material.materials as node.material does not have a materials array.",this);return}t=t.material.materials;break;case"bones":if(!t.skeleton){ne("PropertyBinding: Can not bind to bones as node does not have a skeleton.",this);return}t=t.skeleton.bones;for(let u=0;u<t.length;u++)if(t[u].name===l){l=u;break}break;case"map":if("map"in t){t=t.map;break}if(!t.material){ne("PropertyBinding: Can not bind to material as node does not have a material.",this);return}if(!t.material.map){ne("PropertyBinding: Can not bind to material.map as node.material does not have a map.",this);return}t=t.material.map;break;default:if(t[n]===void 0){ne("PropertyBinding: Can not bind to objectName of node undefined.",this);return}t=t[n]}if(l!==void 0){if(t[l]===void 0){ne("PropertyBinding: Trying to bind to objectIndex of objectName, but is undefined.",this,t);return}t=t[l]}}let o=t[s];if(o===void 0){let l=e.nodeName;ne("PropertyBinding: Trying to update property for track: "+l+"."+s+" but it wasn't found.",t);return}let a=this.Versioning.None;this.targetObject=t,t.isMaterial===!0?a=this.Versioning.NeedsUpdate:t.isObject3D===!0&&(a=this.Versioning.MatrixWorldNeedsUpdate);let c=this.BindingType.Direct;if(r!==void 0){if(s==="morphTargetInfluences"){if(!t.geometry){ne("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.",this);return}if(!t.geometry.morphAttributes){ne("PropertyBinding: Can not bind to morphTargetInfluences because node does not have a geometry.morphAttributes.",this);return}t.morphTargetDictionary[r]!==void 0&&(r=t.morphTargetDictionary[r])}c=this.BindingType.ArrayElement,this.resolvedProperty=o,this.propertyIndex=r}else o.fromArray!==void 0&&o.toArray!==void 0?(c=this.BindingType.HasFromToArray,this.resolvedProperty=o):Array.isArray(o)?(c=this.BindingType.EntireArray,this.resolvedProperty=o):this.propertyName=s;this.getValue=this.GetterByBindingType[c],this.setValue=this.SetterByBindingTypeAndVersioning[c][a]}unbind(){this.node=null,this.getValue=this._getValue_unbound,this.setValue=this._setValue_unbound}};We.Composite=_u;We.prototype.BindingType={Direct:0,EntireArray:1,ArrayElement:2,HasFromToArray:3};We.prototype.Versioning={None:0,NeedsUpdate:1,MatrixWorldNeedsUpdate:2};We.prototype.GetterByBindingType=[We.prototype._getValue_direct,We.prototype._getValue_array,We.prototype._getValue_arrayElement,We.prototype._getValue_toArray];We.prototype.SetterByBindingTypeAndVersioning=[[We.prototype._setValue_direct,We.prototype._setValue_direct_setNeedsUpdate,We.prototype._setValue_direct_setMatrixWorldNeedsUpdate],[We.prototype._setValue_array,We.prototype._setValue_array_setNeedsUpdate,We.prototype._setValue_array_setMatrixWorldNeedsUpdate],[We.prototype._setValue_arrayElement,We.prototype._setValue_arrayElement_setNeedsUpdate,We.prototype._setValue_arrayElement_setMatrixWorldNeedsUpdate],[We.prototype._setValue_fromArray,We.prototype._setValue_fromArray_setNeedsUpdate,We.prototype._setValue_fromArray_setMatrixWorldNeedsUpdate]];var kw=new Float32Array(1);var to=class{constructor(t=1,e=0,n=0){this.radius=t,this.phi=e,this.theta=n}set(t,e,n){return this.radius=t,this.phi=e,this.theta=n,this}copy(t){return this.radius=t.radius,this.phi=t.phi,this.theta=t.theta,this}makeSafe(){return this.phi=me(this.phi,1e-6,Math.PI-1e-6),this}setFromVector3(t){return this.setFromCartesianCoords(t.x,t.y,t.z)}setFromCartesianCoords(t,e,n){return this.radius=Math.sqrt(t*t+e*e+n*n),this.radius===0?(this.theta=0,this.phi=0):(this.theta=Math.atan2(t,n),this.phi=Math.acos(me(e/this.radius,-1,1))),this}clone(){return new this.constructor().copy(this)}};var xu=class{static{this.prototype.isMatrix2=!0}constructor(t,e,n,s){this.elements=[1,0,0,1],t!==void 0&&this.set(t,e,n,s)}identity(){return this.set(1,0,0,1),this}fromArray(t,e=0){for(let n=0;n<4;n++)this.elements[n]=t[n+e];return this}set(t,e,n,s){let r=this.elements;return r[0]=t,r[2]=e,r[1]=n,r[3]=s,this}};var ia=class extends Ai{constructor(t,e=null){super(),this.object=t,this.domElement=e,this.enabled=!0,this.state=-1,this.keys={},this.mouseButtons={LEFT:null,MIDDLE:null,RIGHT:null},this.touches={ONE:null,TWO:null}}connect(t){this.domElement!==null&&this.disconnect(),this.domElement=t}disconnect(){}dispose(){}update(){}};function ju(i,t,e,n){let s=Jx(n);switch(e){case Ou:return i*t;case ku:return i*t/s.components*s.byteLength;case nc:return i*t/s.components*s.byteLength;case ks:return i*t*2/s.components*s.byteLength;case ic:return i*t*2/s.components*s.byteLength;case Bu:return i*t*3/s.components*s.byteLength;case Li:return i*t*4/s.components*s.byteLength;case sc:return i*t*4/s.components*s.byteLength;case oa:case aa:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case la:case ca:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case oc:case lc:return Math.max(i,16)*Math.max(t,8)/4;case rc:case ac:return Math.max(i,8)*Math.max(t,8)/2;case cc:case hc:case dc:case fc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*8;case uc:case ha:case pc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case mc:return Math.floor((i+3)/4)*Math.floor((t+3)/4)*16;case gc:return Math.floor((i+4)/5)*Math.floor((t+3)/4)*16;case _c:return Math.floor((i+4)/5)*Math.floor((t+4)/5)*16;case xc:return Math.floor((i+5)/6)*Math.floor((t+4)/5)*16;case yc:return Math.floor((i+5)/6)*Math.floor((t+5)/6)*16;case vc:return Math.floor((i+7)/8)*Math.floor((t+4)/5)*16;case Mc:return Math.floor((i+7)/8)*Math.floor((t+5)/6)*16;case Sc:return Math.floor((i+7)/8)*Math.floor((t+7)/8)*16;case bc:return Math.floor((i+9)/10)*Math.floor((t+4)/5)*16;case wc:return Math.floor((i+9)/10)*Math.floor((t+5)/6)*16;case Ec:return Math.floor((i+9)/10)*Math.floor((t+7)/8)*16;case Tc:return Math.floor((i+9)/10)*Math.floor((t+9)/10)*16;case Ac:return Math.floor((i+11)/12)*Math.floor((t+9)/10)*16;case Rc:return Math.floor((i+11)/12)*Math.floor((t+11)/12)*16;case Cc:case Pc:case Ic:return Math.ceil(i/4)*Math.ceil(t/4)*16;case Lc:case Dc:return Math.ceil(i/4)*Math.ceil(t/4)*8;case ua:case Nc:return Math.ceil(i/4)*Math.ceil(t/4)*16}throw new Error(`Unable to determine texture byte length for ${e} format.`)}function Jx(i){switch(i){case Jn:case Du:return{byteLength:1,components:1};case so:case Nu:case Ii:return{byteLength:2,components:1};case tc:case ec:return{byteLength:2,components:4};case Ci:case Ql:case Pi:return{byteLength:4,components:1};case Uu:case Fu:return{byteLength:4,components:3}}throw new Error(`THREE.TextureUtils: Unknown texture type ${i}.`)}typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("register",{detail:{revision:"187"}}));typeof window<"u"&&(window.__THREE__?Zt("WARNING: Multiple instances of Three.js being imported."):window.__THREE__="187");function lg(){let i=null,t=!1,e=null,n=null;function s(r,o){n=i.requestAnimationFrame(s),e(r,o)}return{start:function(){t!==!0&&e!==null&&i!==null&&(n=i.requestAnimationFrame(s),t=!0)},stop:function(){i!==null&&i.cancelAnimationFrame(n),t=!1},setAnimationLoop:function(r){e=r},setContext:function(r){i=r}}}function jx(i){let t=new WeakMap;function e(a,c){let l=a.array,u=a.usage,h=l.byteLength,d=i.createBuffer();i.bindBuffer(c,d),i.bufferData(c,l,u),a.onUploadCallback();let f;if(l instanceof Float32Array)f=i.FLOAT;else if(typeof Float16Array<"u"&&l instanceof Float16Array)f=i.HALF_FLOAT;else if(l instanceof Uint16Array)a.isFloat16BufferAttribute?f=i.HALF_FLOAT:f=i.UNSIGNED_SHORT;else if(l instanceof Int16Array)f=i.SHORT;else if(l instanceof Uint32Array)f=i.UNSIGNED_INT;else if(l instanceof Int32Array)f=i.INT;else if(l instanceof Int8Array)f=i.BYTE;else if(l instanceof Uint8Array)f=i.UNSIGNED_BYTE;else if(l instanceof Uint8ClampedArray)f=i.UNSIGNED_BYTE;else throw new Error("THREE.WebGLAttributes: Unsupported buffer data format: "+l);return{buffer:d,type:f,bytesPerElement:l.BYTES_PER_ELEMENT,version:a.version,size:h}}function n(a,c,l){let u=c.array,h=c.updateRanges;if(i.bindBuffer(l,a),h.length===0)i.bufferSubData(l,0,u);else{h.sort((f,g)=>f.start-g.start);let d=0;for(let f=1;f<h.length;f++){let g=h[d],v=h[f];v.start<=g.start+g.count+1?g.count=Math.max(g.count,v.start+v.count-g.start):(++d,h[d]=v)}h.length=d+1;for(let f=0,g=h.length;f<g;f++){let v=h[f];i.bufferSubData(l,v.start*u.BYTES_PER_ELEMENT,u,v.start,v.count)}c.clearUpdateRanges()}c.onUploadCallback()}function s(a){return a.isInterleavedBufferAttribute&&(a=a.data),t.get(a)}function r(a){a.isInterleavedBufferAttribute&&(a=a.data);let c=t.get(a);c&&(i.deleteBuffer(c.buffer),t.delete(a))}function o(a,c){if(a.isInterleavedBufferAttribute&&(a=a.data),a.isGLBufferAttribute){let u=t.get(a);(!u||u.version<a.version)&&t.set(a,{buffer:a.buffer,type:a.type,bytesPerElement:a.elementSize,version:a.version});return}let l=t.get(a);if(l===void 0)t.set(a,e(a,c));else if(l.version<a.version){if(l.size!==a.array.byteLength)throw new Error("THREE.WebGLAttributes: The size of the buffer attribute's array buffer does not match the original size. Resizing buffer attributes is not supported.");n(l.buffer,a,c),l.version=a.version}}return{get:s,remove:r,update:o}}var Qx=`#ifdef USE_ALPHAHASH
	if ( diffuseColor.a < getAlphaHashThreshold( vPosition ) ) discard;
#endif`,ty=`#ifdef USE_ALPHAHASH
	const float ALPHA_HASH_SCALE = 0.05;
	float hash2D( vec2 value ) {
		return fract( 1.0e4 * sin( 17.0 * value.x + 0.1 * value.y ) * ( 0.1 + abs( sin( 13.0 * value.y + value.x ) ) ) );
	}
	float hash3D( vec3 value ) {
		return hash2D( vec2( hash2D( value.xy ), value.z ) );
	}
	float getAlphaHashThreshold( vec3 position ) {
		float maxDeriv = max(
			length( dFdx( position.xyz ) ),
			length( dFdy( position.xyz ) )
		);
		float pixScale = 1.0 / ( ALPHA_HASH_SCALE * maxDeriv );
		vec2 pixScales = vec2(
			exp2( floor( log2( pixScale ) ) ),
			exp2( ceil( log2( pixScale ) ) )
		);
		vec2 alpha = vec2(
			hash3D( floor( pixScales.x * position.xyz ) ),
			hash3D( floor( pixScales.y * position.xyz ) )
		);
		float lerpFactor = fract( log2( pixScale ) );
		float x = ( 1.0 - lerpFactor ) * alpha.x + lerpFactor * alpha.y;
		float a = min( lerpFactor, 1.0 - lerpFactor );
		vec3 cases = vec3(
			x * x / ( 2.0 * a * ( 1.0 - a ) ),
			( x - 0.5 * a ) / ( 1.0 - a ),
			1.0 - ( ( 1.0 - x ) * ( 1.0 - x ) / ( 2.0 * a * ( 1.0 - a ) ) )
		);
		float threshold = ( x < ( 1.0 - a ) )
			? ( ( x < a ) ? cases.x : cases.y )
			: cases.z;
		return clamp( threshold , 1.0e-6, 1.0 );
	}
#endif`,ey=`#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, vAlphaMapUv ).g;
#endif`,ny=`#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,iy=`#ifdef USE_ALPHATEST
	#ifdef ALPHA_TO_COVERAGE
	diffuseColor.a = smoothstep( alphaTest, alphaTest + fwidth( diffuseColor.a ), diffuseColor.a );
	if ( diffuseColor.a == 0.0 ) discard;
	#else
	if ( diffuseColor.a < alphaTest ) discard;
	#endif
#endif`,sy=`#ifdef USE_ALPHATEST
	uniform float alphaTest;
#endif`,ry=`#ifdef USE_AOMAP
	float ambientOcclusion = ( texture2D( aoMap, vAoMapUv ).r - 1.0 ) * aoMapIntensity + 1.0;
	reflectedLight.indirectDiffuse *= ambientOcclusion;
	#if defined( USE_CLEARCOAT ) 
		clearcoatSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_SHEEN ) 
		sheenSpecularIndirect *= ambientOcclusion;
	#endif
	#if defined( USE_ENVMAP ) && defined( STANDARD )
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		reflectedLight.indirectSpecular *= computeSpecularOcclusion( dotNV, ambientOcclusion, material.roughness );
	#endif
#endif`,oy=`#ifdef USE_AOMAP
	uniform sampler2D aoMap;
	uniform float aoMapIntensity;
#endif`,ay=`#ifdef USE_BATCHING
	#if ! defined( GL_ANGLE_multi_draw )
	#define gl_DrawID _gl_DrawID
	uniform int _gl_DrawID;
	#endif
	uniform highp sampler2D batchingTexture;
	uniform highp usampler2D batchingIdTexture;
	mat4 getBatchingMatrix( const in float i ) {
		int size = textureSize( batchingTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( batchingTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( batchingTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( batchingTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( batchingTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
	float getIndirectIndex( const in int i ) {
		int size = textureSize( batchingIdTexture, 0 ).x;
		int x = i % size;
		int y = i / size;
		return float( texelFetch( batchingIdTexture, ivec2( x, y ), 0 ).r );
	}
#endif
#ifdef USE_BATCHING_COLOR
	uniform sampler2D batchingColorTexture;
	vec4 getBatchingColor( const in float i ) {
		int size = textureSize( batchingColorTexture, 0 ).x;
		int j = int( i );
		int x = j % size;
		int y = j / size;
		return texelFetch( batchingColorTexture, ivec2( x, y ), 0 );
	}
#endif`,ly=`#ifdef USE_BATCHING
	mat4 batchingMatrix = getBatchingMatrix( getIndirectIndex( gl_DrawID ) );
#endif`,cy=`vec3 transformed = vec3( position );
#ifdef USE_ALPHAHASH
	vPosition = vec3( position );
#endif`,hy=`vec3 objectNormal = vec3( normal );
#ifdef USE_TANGENT
	vec3 objectTangent = vec3( tangent.xyz );
#endif`,uy=`float G_BlinnPhong_Implicit( ) {
	return 0.25;
}
float D_BlinnPhong( const in float shininess, const in float dotNH ) {
	return RECIPROCAL_PI * ( shininess * 0.5 + 1.0 ) * pow( dotNH, shininess );
}
vec3 BRDF_BlinnPhong( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 specularColor, const in float shininess ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( specularColor, 1.0, dotVH );
	float G = G_BlinnPhong_Implicit( );
	float D = D_BlinnPhong( shininess, dotNH );
	return F * ( G * D );
} // validated`,dy=`#ifdef USE_IRIDESCENCE
	const mat3 XYZ_TO_REC709 = mat3(
		 3.2404542, -0.9692660,  0.0556434,
		-1.5371385,  1.8760108, -0.2040259,
		-0.4985314,  0.0415560,  1.0572252
	);
	vec3 Fresnel0ToIor( vec3 fresnel0 ) {
		vec3 sqrtF0 = sqrt( fresnel0 );
		return ( vec3( 1.0 ) + sqrtF0 ) / ( vec3( 1.0 ) - sqrtF0 );
	}
	vec3 IorToFresnel0( vec3 transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - vec3( incidentIor ) ) / ( transmittedIor + vec3( incidentIor ) ) );
	}
	float IorToFresnel0( float transmittedIor, float incidentIor ) {
		return pow2( ( transmittedIor - incidentIor ) / ( transmittedIor + incidentIor ));
	}
	vec3 evalSensitivity( float OPD, vec3 shift ) {
		float phase = 2.0 * PI * OPD * 1.0e-9;
		vec3 val = vec3( 5.4856e-13, 4.4201e-13, 5.2481e-13 );
		vec3 pos = vec3( 1.6810e+06, 1.7953e+06, 2.2084e+06 );
		vec3 var = vec3( 4.3278e+09, 9.3046e+09, 6.6121e+09 );
		vec3 xyz = val * sqrt( 2.0 * PI * var ) * cos( pos * phase + shift ) * exp( - pow2( phase ) * var );
		xyz.x += 9.7470e-14 * sqrt( 2.0 * PI * 4.5282e+09 ) * cos( 2.2399e+06 * phase + shift[ 0 ] ) * exp( - 4.5282e+09 * pow2( phase ) );
		xyz /= 1.0685e-7;
		vec3 rgb = XYZ_TO_REC709 * xyz;
		return rgb;
	}
	vec3 evalIridescence( float outsideIOR, float eta2, float cosTheta1, float thinFilmThickness, vec3 baseF0 ) {
		vec3 I;
		float iridescenceIOR = mix( outsideIOR, eta2, smoothstep( 0.0, 0.03, thinFilmThickness ) );
		float sinTheta2Sq = pow2( outsideIOR / iridescenceIOR ) * ( 1.0 - pow2( cosTheta1 ) );
		float cosTheta2Sq = 1.0 - sinTheta2Sq;
		if ( cosTheta2Sq < 0.0 ) {
			return vec3( 1.0 );
		}
		float cosTheta2 = sqrt( cosTheta2Sq );
		float R0 = IorToFresnel0( iridescenceIOR, outsideIOR );
		float R12 = F_Schlick( R0, 1.0, cosTheta1 );
		float T121 = 1.0 - R12;
		float phi12 = 0.0;
		if ( iridescenceIOR < outsideIOR ) phi12 = PI;
		float phi21 = PI - phi12;
		vec3 baseIOR = Fresnel0ToIor( clamp( baseF0, 0.0, 0.9999 ) );		vec3 R1 = IorToFresnel0( baseIOR, iridescenceIOR );
		vec3 R23 = F_Schlick( R1, 1.0, cosTheta2 );
		vec3 phi23 = vec3( 0.0 );
		if ( baseIOR[ 0 ] < iridescenceIOR ) phi23[ 0 ] = PI;
		if ( baseIOR[ 1 ] < iridescenceIOR ) phi23[ 1 ] = PI;
		if ( baseIOR[ 2 ] < iridescenceIOR ) phi23[ 2 ] = PI;
		float OPD = 2.0 * iridescenceIOR * thinFilmThickness * cosTheta2;
		vec3 phi = vec3( phi21 ) + phi23;
		vec3 R123 = clamp( R12 * R23, 1e-5, 0.9999 );
		vec3 r123 = sqrt( R123 );
		vec3 Rs = pow2( T121 ) * R23 / ( vec3( 1.0 ) - R123 );
		vec3 C0 = R12 + Rs;
		I = C0;
		vec3 Cm = Rs - T121;
		for ( int m = 1; m <= 2; ++ m ) {
			Cm *= r123;
			vec3 Sm = 2.0 * evalSensitivity( float( m ) * OPD, float( m ) * phi );
			I += Cm * Sm;
		}
		return max( I, vec3( 0.0 ) );
	}
#endif`,fy=`#ifdef USE_BUMPMAP
	uniform sampler2D bumpMap;
	uniform float bumpScale;
	vec2 dHdxy_fwd() {
		vec2 dSTdx = dFdx( vBumpMapUv );
		vec2 dSTdy = dFdy( vBumpMapUv );
		float Hll = bumpScale * texture2D( bumpMap, vBumpMapUv ).x;
		float dBx = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdx ).x - Hll;
		float dBy = bumpScale * texture2D( bumpMap, vBumpMapUv + dSTdy ).x - Hll;
		return vec2( dBx, dBy );
	}
	vec3 perturbNormalArb( vec3 surf_pos, vec3 surf_norm, vec2 dHdxy, float faceDirection ) {
		vec3 vSigmaX = normalize( dFdx( surf_pos.xyz ) );
		vec3 vSigmaY = normalize( dFdy( surf_pos.xyz ) );
		vec3 vN = surf_norm;
		vec3 R1 = cross( vSigmaY, vN );
		vec3 R2 = cross( vN, vSigmaX );
		float fDet = dot( vSigmaX, R1 ) * faceDirection;
		vec3 vGrad = sign( fDet ) * ( dHdxy.x * R1 + dHdxy.y * R2 );
		return normalize( abs( fDet ) * surf_norm - vGrad );
	}
#endif`,py=`#if NUM_CLIPPING_PLANES > 0
	vec4 plane;
	#ifdef ALPHA_TO_COVERAGE
		float distanceToPlane, distanceGradient;
		float clipOpacity = 1.0;
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
			distanceGradient = fwidth( distanceToPlane ) / 2.0;
			clipOpacity *= smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			if ( clipOpacity == 0.0 ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			float unionClipOpacity = 1.0;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				distanceToPlane = - dot( vClipPosition, plane.xyz ) + plane.w;
				distanceGradient = fwidth( distanceToPlane ) / 2.0;
				unionClipOpacity *= 1.0 - smoothstep( - distanceGradient, distanceGradient, distanceToPlane );
			}
			#pragma unroll_loop_end
			clipOpacity *= 1.0 - unionClipOpacity;
		#endif
		diffuseColor.a *= clipOpacity;
		if ( diffuseColor.a == 0.0 ) discard;
	#else
		#pragma unroll_loop_start
		for ( int i = 0; i < UNION_CLIPPING_PLANES; i ++ ) {
			plane = clippingPlanes[ i ];
			if ( dot( vClipPosition, plane.xyz ) > plane.w ) discard;
		}
		#pragma unroll_loop_end
		#if UNION_CLIPPING_PLANES < NUM_CLIPPING_PLANES
			bool clipped = true;
			#pragma unroll_loop_start
			for ( int i = UNION_CLIPPING_PLANES; i < NUM_CLIPPING_PLANES; i ++ ) {
				plane = clippingPlanes[ i ];
				clipped = ( dot( vClipPosition, plane.xyz ) > plane.w ) && clipped;
			}
			#pragma unroll_loop_end
			if ( clipped ) discard;
		#endif
	#endif
#endif`,my=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
	uniform vec4 clippingPlanes[ NUM_CLIPPING_PLANES ];
#endif`,gy=`#if NUM_CLIPPING_PLANES > 0
	varying vec3 vClipPosition;
#endif`,_y=`#if NUM_CLIPPING_PLANES > 0
	vClipPosition = - mvPosition.xyz;
#endif`,xy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	diffuseColor *= vColor;
#endif`,yy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA )
	varying vec4 vColor;
#endif`,vy=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	varying vec4 vColor;
#endif`,My=`#if defined( USE_COLOR ) || defined( USE_COLOR_ALPHA ) || defined( USE_INSTANCING_COLOR ) || defined( USE_BATCHING_COLOR )
	vColor = vec4( 1.0 );
#endif
#ifdef USE_COLOR_ALPHA
	vColor *= color;
#elif defined( USE_COLOR )
	vColor.rgb *= color;
#endif
#ifdef USE_INSTANCING_COLOR
	vColor.rgb *= instanceColor.rgb;
#endif
#ifdef USE_BATCHING_COLOR
	vColor *= getBatchingColor( getIndirectIndex( gl_DrawID ) );
#endif`,Sy=`#define PI 3.141592653589793
#define PI2 6.283185307179586
#define PI_HALF 1.5707963267948966
#define RECIPROCAL_PI 0.3183098861837907
#define RECIPROCAL_PI2 0.15915494309189535
#define EPSILON 1e-6
#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
#define whiteComplement( a ) ( 1.0 - saturate( a ) )
float pow2( const in float x ) { return x*x; }
vec3 pow2( const in vec3 x ) { return x*x; }
float pow3( const in float x ) { return x*x*x; }
float pow4( const in float x ) { float x2 = x*x; return x2*x2; }
float max3( const in vec3 v ) { return max( max( v.x, v.y ), v.z ); }
float average( const in vec3 v ) { return dot( v, vec3( 0.3333333 ) ); }
highp float rand( const in vec2 uv ) {
	const highp float a = 12.9898, b = 78.233, c = 43758.5453;
	highp float dt = dot( uv.xy, vec2( a,b ) ), sn = mod( dt, PI );
	return fract( sin( sn ) * c );
}
#ifdef HIGH_PRECISION
	float precisionSafeLength( vec3 v ) { return length( v ); }
#else
	float precisionSafeLength( vec3 v ) {
		float maxComponent = max3( abs( v ) );
		return length( v / maxComponent ) * maxComponent;
	}
#endif
struct IncidentLight {
	vec3 color;
	vec3 direction;
	bool visible;
};
struct ReflectedLight {
	vec3 directDiffuse;
	vec3 directSpecular;
	vec3 indirectDiffuse;
	vec3 indirectSpecular;
};
#ifdef USE_ALPHAHASH
	varying vec3 vPosition;
#endif
vec3 transformDirection( in vec3 dir, in mat4 matrix ) {
	return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );
}
#define inverseTransformDirection transformDirectionByInverseViewMatrix
vec3 transformNormalByInverseViewMatrix( in vec3 normal, in mat4 viewMatrix ) {
	return normalize( ( vec4( normal, 0.0 ) * viewMatrix ).xyz );
}
vec3 transformDirectionByInverseViewMatrix( in vec3 dir, in mat4 viewMatrix ) {
	return normalize( ( vec4( dir, 0.0 ) * viewMatrix ).xyz );
}
bool isPerspectiveMatrix( mat4 m ) {
	return m[ 2 ][ 3 ] == - 1.0;
}
vec2 equirectUv( in vec3 dir ) {
	float u = atan( dir.z, dir.x ) * RECIPROCAL_PI2 + 0.5;
	float v = asin( clamp( dir.y, - 1.0, 1.0 ) ) * RECIPROCAL_PI + 0.5;
	return vec2( u, v );
}
vec3 BRDF_Lambert( const in vec3 diffuseColor ) {
	return RECIPROCAL_PI * diffuseColor;
}
vec3 F_Schlick( const in vec3 f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
}
float F_Schlick( const in float f0, const in float f90, const in float dotVH ) {
	float fresnel = exp2( ( - 5.55473 * dotVH - 6.98316 ) * dotVH );
	return f0 * ( 1.0 - fresnel ) + ( f90 * fresnel );
} // validated`,by=`vec3 transformedNormal = objectNormal;
#ifdef USE_TANGENT
	vec3 transformedTangent = objectTangent;
#endif
#ifdef USE_BATCHING
	mat3 bm = mat3( batchingMatrix );
	transformedNormal /= vec3( dot( bm[ 0 ], bm[ 0 ] ), dot( bm[ 1 ], bm[ 1 ] ), dot( bm[ 2 ], bm[ 2 ] ) );
	transformedNormal = bm * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = bm * transformedTangent;
	#endif
#endif
#ifdef USE_INSTANCING
	mat3 im = mat3( instanceMatrix );
	transformedNormal /= vec3( dot( im[ 0 ], im[ 0 ] ), dot( im[ 1 ], im[ 1 ] ), dot( im[ 2 ], im[ 2 ] ) );
	transformedNormal = im * transformedNormal;
	#ifdef USE_TANGENT
		transformedTangent = im * transformedTangent;
	#endif
#endif
transformedNormal = normalMatrix * transformedNormal;
#ifdef FLIP_SIDED
	transformedNormal = - transformedNormal;
#endif
#ifdef USE_TANGENT
	transformedTangent = ( modelViewMatrix * vec4( transformedTangent, 0.0 ) ).xyz;
#endif`,wy=`#ifdef USE_DISPLACEMENTMAP
	uniform sampler2D displacementMap;
	uniform float displacementScale;
	uniform float displacementBias;
#endif`,Ey=`#ifdef USE_DISPLACEMENTMAP
	transformed += normalize( objectNormal ) * ( texture2D( displacementMap, vDisplacementMapUv ).x * displacementScale + displacementBias );
#endif`,Ty=`#ifdef USE_EMISSIVEMAP
	vec4 emissiveColor = texture2D( emissiveMap, vEmissiveMapUv );
	#ifdef DECODE_VIDEO_TEXTURE_EMISSIVE
		emissiveColor = sRGBTransferEOTF( emissiveColor );
	#endif
	totalEmissiveRadiance *= emissiveColor.rgb;
#endif`,Ay=`#ifdef USE_EMISSIVEMAP
	uniform sampler2D emissiveMap;
#endif`,Ry="gl_FragColor = linearToOutputTexel( gl_FragColor );",Cy=`vec4 LinearTransferOETF( in vec4 value ) {
	return value;
}
vec4 sRGBTransferEOTF( in vec4 value ) {
	return vec4( mix( pow( value.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), value.rgb * 0.0773993808, vec3( lessThanEqual( value.rgb, vec3( 0.04045 ) ) ) ), value.a );
}
vec4 sRGBTransferOETF( in vec4 value ) {
	return vec4( mix( pow( value.rgb, vec3( 0.41666 ) ) * 1.055 - vec3( 0.055 ), value.rgb * 12.92, vec3( lessThanEqual( value.rgb, vec3( 0.0031308 ) ) ) ), value.a );
}`,Py=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vec3 cameraToFrag;
		if ( isOrthographic ) {
			cameraToFrag = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToFrag = normalize( vWorldPosition - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vec3 reflectVec = reflect( cameraToFrag, worldNormal );
		#else
			vec3 reflectVec = refract( cameraToFrag, worldNormal, refractionRatio );
		#endif
	#else
		vec3 reflectVec = vReflect;
	#endif
	#ifdef ENVMAP_TYPE_CUBE
		vec4 envColor = textureCube( envMap, envMapRotation * reflectVec );
		#ifdef ENVMAP_BLENDING_MULTIPLY
			outgoingLight = mix( outgoingLight, outgoingLight * envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_MIX )
			outgoingLight = mix( outgoingLight, envColor.xyz, specularStrength * reflectivity );
		#elif defined( ENVMAP_BLENDING_ADD )
			outgoingLight += envColor.xyz * specularStrength * reflectivity;
		#endif
	#endif
#endif`,Iy=`#ifdef USE_ENVMAP
	uniform float envMapIntensity;
	uniform mat3 envMapRotation;
	uniform samplerCube envMap;
	#ifdef ENVMAP_TYPE_PMREM
		float roughnessToMip( const in float roughness ) {
			float r = clamp( roughness, 0.0, 1.0 );
			return ENVMAP_MAX_LOD * r * ( 2.0 - r );
		}
	#endif
#endif`,Ly=`#ifdef USE_ENVMAP
	uniform float reflectivity;
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		varying vec3 vWorldPosition;
		uniform float refractionRatio;
	#else
		varying vec3 vReflect;
	#endif
#endif`,Dy=`#ifdef USE_ENVMAP
	#if defined( USE_BUMPMAP ) || defined( USE_NORMALMAP ) || defined( PHONG ) || defined( LAMBERT )
		#define ENV_WORLDPOS
	#endif
	#ifdef ENV_WORLDPOS
		
		varying vec3 vWorldPosition;
	#else
		varying vec3 vReflect;
		uniform float refractionRatio;
	#endif
#endif`,Ny=`#ifdef USE_ENVMAP
	#ifdef ENV_WORLDPOS
		vWorldPosition = worldPosition.xyz;
	#else
		vec3 cameraToVertex;
		if ( isOrthographic ) {
			cameraToVertex = normalize( vec3( - viewMatrix[ 0 ][ 2 ], - viewMatrix[ 1 ][ 2 ], - viewMatrix[ 2 ][ 2 ] ) );
		} else {
			cameraToVertex = normalize( worldPosition.xyz - cameraPosition );
		}
		vec3 worldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
		#ifdef ENVMAP_MODE_REFLECTION
			vReflect = reflect( cameraToVertex, worldNormal );
		#else
			vReflect = refract( cameraToVertex, worldNormal, refractionRatio );
		#endif
	#endif
#endif`,Uy=`#ifdef USE_FOG
	vFogDepth = - mvPosition.z;
#endif`,Fy=`#ifdef USE_FOG
	varying float vFogDepth;
#endif`,Oy=`#ifdef USE_FOG
	#ifdef FOG_EXP2
		float fogFactor = 1.0 - exp( - fogDensity * fogDensity * vFogDepth * vFogDepth );
	#else
		float fogFactor = smoothstep( fogNear, fogFar, vFogDepth );
	#endif
	gl_FragColor.rgb = mix( gl_FragColor.rgb, fogColor, fogFactor );
#endif`,By=`#ifdef USE_FOG
	uniform vec3 fogColor;
	varying float vFogDepth;
	#ifdef FOG_EXP2
		uniform float fogDensity;
	#else
		uniform float fogNear;
		uniform float fogFar;
	#endif
#endif`,ky=`#ifdef USE_GRADIENTMAP
	uniform sampler2D gradientMap;
#endif
vec3 getGradientIrradiance( vec3 normal, vec3 lightDirection ) {
	float dotNL = dot( normal, lightDirection );
	vec2 coord = vec2( dotNL * 0.5 + 0.5, 0.0 );
	#ifdef USE_GRADIENTMAP
		return vec3( texture2D( gradientMap, coord ).r );
	#else
		vec2 fw = fwidth( coord ) * 0.5;
		return mix( vec3( 0.7 ), vec3( 1.0 ), smoothstep( 0.7 - fw.x, 0.7 + fw.x, coord.x ) );
	#endif
}`,zy=`#ifdef USE_LIGHTMAP
	uniform sampler2D lightMap;
	uniform float lightMapIntensity;
#endif`,Vy=`LambertMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularStrength = specularStrength;`,Gy=`varying vec3 vViewPosition;
struct LambertMaterial {
	vec3 diffuseColor;
	float specularStrength;
};
void RE_Direct_Lambert( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Lambert( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in LambertMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Lambert
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Lambert`,Hy=`uniform bool receiveShadow;
uniform vec3 ambientLightColor;
#if defined( USE_LIGHT_PROBES )
	uniform vec3 lightProbe[ 9 ];
#endif
vec3 shGetIrradianceAt( in vec3 normal, in vec3 shCoefficients[ 9 ] ) {
	float x = normal.x, y = normal.y, z = normal.z;
	vec3 result = shCoefficients[ 0 ] * 0.886227;
	result += shCoefficients[ 1 ] * 2.0 * 0.511664 * y;
	result += shCoefficients[ 2 ] * 2.0 * 0.511664 * z;
	result += shCoefficients[ 3 ] * 2.0 * 0.511664 * x;
	result += shCoefficients[ 4 ] * 2.0 * 0.429043 * x * y;
	result += shCoefficients[ 5 ] * 2.0 * 0.429043 * y * z;
	result += shCoefficients[ 6 ] * ( 0.743125 * z * z - 0.247708 );
	result += shCoefficients[ 7 ] * 2.0 * 0.429043 * x * z;
	result += shCoefficients[ 8 ] * 0.429043 * ( x * x - y * y );
	return result;
}
vec3 getLightProbeIrradiance( const in vec3 lightProbe[ 9 ], const in vec3 normal ) {
	vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec3 irradiance = shGetIrradianceAt( worldNormal, lightProbe );
	return irradiance;
}
vec3 getAmbientLightIrradiance( const in vec3 ambientLightColor ) {
	vec3 irradiance = ambientLightColor;
	return irradiance;
}
float getDistanceAttenuation( const in float lightDistance, const in float cutoffDistance, const in float decayExponent ) {
	float distanceFalloff = 1.0 / max( pow( lightDistance, decayExponent ), 0.01 );
	if ( cutoffDistance > 0.0 ) {
		distanceFalloff *= pow2( saturate( 1.0 - pow4( lightDistance / cutoffDistance ) ) );
	}
	return distanceFalloff;
}
float getSpotAttenuation( const in float coneCosine, const in float penumbraCosine, const in float angleCosine ) {
	return smoothstep( coneCosine, penumbraCosine, angleCosine );
}
#if NUM_SUN_LIGHTS > 0
	struct SunLight {
		vec3 direction;
		vec3 color;
	};
	uniform SunLight sunLights[ NUM_SUN_LIGHTS ];
	void getSunLightInfo( const in SunLight sunLight, out IncidentLight light ) {
		light.color = sunLight.color;
		light.direction = sunLight.direction;
		light.visible = true;
	}
#endif
#if NUM_DIR_LIGHTS > 0
	struct DirectionalLight {
		vec3 direction;
		vec3 color;
	};
	uniform DirectionalLight directionalLights[ NUM_DIR_LIGHTS ];
	void getDirectionalLightInfo( const in DirectionalLight directionalLight, out IncidentLight light ) {
		light.color = directionalLight.color;
		light.direction = directionalLight.direction;
		light.visible = true;
	}
#endif
#if NUM_POINT_LIGHTS > 0
	struct PointLight {
		vec3 position;
		vec3 color;
		float distance;
		float decay;
	};
	uniform PointLight pointLights[ NUM_POINT_LIGHTS ];
	void getPointLightInfo( const in PointLight pointLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = pointLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float lightDistance = length( lVector );
		light.color = pointLight.color;
		light.color *= getDistanceAttenuation( lightDistance, pointLight.distance, pointLight.decay );
		light.visible = ( light.color != vec3( 0.0 ) );
	}
#endif
#if NUM_SPOT_LIGHTS > 0
	struct SpotLight {
		vec3 position;
		vec3 direction;
		vec3 color;
		float distance;
		float decay;
		float coneCos;
		float penumbraCos;
	};
	uniform SpotLight spotLights[ NUM_SPOT_LIGHTS ];
	void getSpotLightInfo( const in SpotLight spotLight, const in vec3 geometryPosition, out IncidentLight light ) {
		vec3 lVector = spotLight.position - geometryPosition;
		light.direction = normalize( lVector );
		float angleCos = dot( light.direction, spotLight.direction );
		float spotAttenuation = getSpotAttenuation( spotLight.coneCos, spotLight.penumbraCos, angleCos );
		if ( spotAttenuation > 0.0 ) {
			float lightDistance = length( lVector );
			light.color = spotLight.color * spotAttenuation;
			light.color *= getDistanceAttenuation( lightDistance, spotLight.distance, spotLight.decay );
			light.visible = ( light.color != vec3( 0.0 ) );
		} else {
			light.color = vec3( 0.0 );
			light.visible = false;
		}
	}
#endif
#if NUM_RECT_AREA_LIGHTS > 0
	struct RectAreaLight {
		vec3 color;
		vec3 position;
		vec3 halfWidth;
		vec3 halfHeight;
	};
	uniform sampler2D ltc_1;	uniform sampler2D ltc_2;
	uniform RectAreaLight rectAreaLights[ NUM_RECT_AREA_LIGHTS ];
#endif
#if NUM_HEMI_LIGHTS > 0
	struct HemisphereLight {
		vec3 direction;
		vec3 skyColor;
		vec3 groundColor;
	};
	uniform HemisphereLight hemisphereLights[ NUM_HEMI_LIGHTS ];
	vec3 getHemisphereLightIrradiance( const in HemisphereLight hemiLight, const in vec3 normal ) {
		float dotNL = dot( normal, hemiLight.direction );
		float hemiDiffuseWeight = 0.5 * dotNL + 0.5;
		vec3 irradiance = mix( hemiLight.groundColor, hemiLight.skyColor, hemiDiffuseWeight );
		return irradiance;
	}
#endif
#include <lightprobes_pars_fragment>`,Wy=`#ifdef USE_ENVMAP
	vec3 getIBLIrradiance( const in vec3 normal ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 worldNormal = transformNormalByInverseViewMatrix( normal, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * worldNormal, ENVMAP_MAX_LOD );
			return PI * envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	vec3 getIBLRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
		#ifdef ENVMAP_TYPE_PMREM
			vec3 reflectVec = reflect( - viewDir, normal );
			reflectVec = normalize( mix( reflectVec, normal, pow4( roughness ) ) );
			reflectVec = transformDirectionByInverseViewMatrix( reflectVec, viewMatrix );
			vec4 envMapColor = textureLod( envMap, envMapRotation * reflectVec, roughnessToMip( roughness ) );
			return envMapColor.rgb * envMapIntensity;
		#else
			return vec3( 0.0 );
		#endif
	}
	#ifdef USE_RETROREFLECTION
		vec3 getIBLRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 retroVec = normalize( mix( viewDir, normal, pow4( roughness ) ) );
				retroVec = transformDirectionByInverseViewMatrix( retroVec, viewMatrix );
				vec4 envMapColor = textureLod( envMap, envMapRotation * retroVec, roughnessToMip( roughness ) );
				return envMapColor.rgb * envMapIntensity;
			#else
				return vec3( 0.0 );
			#endif
		}
	#endif
	#ifdef USE_ANISOTROPY
		vec3 getIBLAnisotropyRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
			#ifdef ENVMAP_TYPE_PMREM
				vec3 bentNormal = cross( bitangent, viewDir );
				bentNormal = normalize( cross( bentNormal, bitangent ) );
				bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
				return getIBLRadiance( viewDir, bentNormal, roughness );
			#else
				return vec3( 0.0 );
			#endif
		}
		#ifdef USE_RETROREFLECTION
			vec3 getIBLAnisotropyRetroRadiance( const in vec3 viewDir, const in vec3 normal, const in float roughness, const in vec3 bitangent, const in float anisotropy ) {
				#ifdef ENVMAP_TYPE_PMREM
					vec3 bentNormal = cross( bitangent, viewDir );
					bentNormal = normalize( cross( bentNormal, bitangent ) );
					bentNormal = normalize( mix( bentNormal, normal, pow2( pow2( 1.0 - anisotropy * ( 1.0 - roughness ) ) ) ) );
					return getIBLRetroRadiance( viewDir, bentNormal, roughness );
				#else
					return vec3( 0.0 );
				#endif
			}
		#endif
	#endif
#endif`,Xy=`ToonMaterial material;
material.diffuseColor = diffuseColor.rgb;`,qy=`varying vec3 vViewPosition;
struct ToonMaterial {
	vec3 diffuseColor;
};
void RE_Direct_Toon( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 irradiance = getGradientIrradiance( geometryNormal, directLight.direction ) * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
void RE_IndirectDiffuse_Toon( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in ToonMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_Toon
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Toon`,Yy=`BlinnPhongMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.specularColor = specular;
material.specularShininess = shininess;
material.specularStrength = specularStrength;`,$y=`varying vec3 vViewPosition;
struct BlinnPhongMaterial {
	vec3 diffuseColor;
	vec3 specularColor;
	float specularShininess;
	float specularStrength;
};
void RE_Direct_BlinnPhong( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	reflectedLight.directDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
	reflectedLight.directSpecular += irradiance * BRDF_BlinnPhong( directLight.direction, geometryViewDir, geometryNormal, material.specularColor, material.specularShininess ) * material.specularStrength;
}
void RE_IndirectDiffuse_BlinnPhong( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in BlinnPhongMaterial material, inout ReflectedLight reflectedLight ) {
	reflectedLight.indirectDiffuse += irradiance * BRDF_Lambert( material.diffuseColor );
}
#define RE_Direct				RE_Direct_BlinnPhong
#define RE_IndirectDiffuse		RE_IndirectDiffuse_BlinnPhong`,Zy=`PhysicalMaterial material;
material.diffuseColor = diffuseColor.rgb;
material.diffuseContribution = diffuseColor.rgb * ( 1.0 - metalnessFactor );
material.metalness = metalnessFactor;
vec3 dxy = max( abs( dFdx( nonPerturbedNormal ) ), abs( dFdy( nonPerturbedNormal ) ) );
float geometryRoughness = max( max( dxy.x, dxy.y ), dxy.z );
material.roughness = max( roughnessFactor, 0.045 );
material.roughness += geometryRoughness;
material.roughness = min( material.roughness, 1.0 );
#ifdef USE_DIFFUSE_ROUGHNESS
	float diffuseRoughnessFactor = diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		diffuseRoughnessFactor *= texture2D( diffuseRoughnessMap, vDiffuseRoughnessMapUv ).r;
	#endif
	material.diffuseRoughness = saturate( diffuseRoughnessFactor );
#endif
#ifdef IOR
	material.ior = ior;
	#ifdef USE_SPECULAR
		float specularIntensityFactor = specularIntensity;
		vec3 specularColorFactor = specularColor;
		#ifdef USE_SPECULAR_COLORMAP
			specularColorFactor *= texture2D( specularColorMap, vSpecularColorMapUv ).rgb;
		#endif
		#ifdef USE_SPECULAR_INTENSITYMAP
			specularIntensityFactor *= texture2D( specularIntensityMap, vSpecularIntensityMapUv ).a;
		#endif
		material.specularF90 = mix( specularIntensityFactor, 1.0, metalnessFactor );
	#else
		float specularIntensityFactor = 1.0;
		vec3 specularColorFactor = vec3( 1.0 );
		material.specularF90 = 1.0;
	#endif
	material.specularColor = min( pow2( ( material.ior - 1.0 ) / ( material.ior + 1.0 ) ) * specularColorFactor, vec3( 1.0 ) ) * specularIntensityFactor;
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
#else
	material.specularColor = vec3( 0.04 );
	material.specularColorBlended = mix( material.specularColor, diffuseColor.rgb, metalnessFactor );
	material.specularF90 = 1.0;
#endif
#ifdef USE_CLEARCOAT
	material.clearcoat = clearcoat;
	material.clearcoatRoughness = clearcoatRoughness;
	material.clearcoatF0 = vec3( 0.04 );
	material.clearcoatF90 = 1.0;
	#ifdef USE_CLEARCOATMAP
		material.clearcoat *= texture2D( clearcoatMap, vClearcoatMapUv ).x;
	#endif
	#ifdef USE_CLEARCOAT_ROUGHNESSMAP
		material.clearcoatRoughness *= texture2D( clearcoatRoughnessMap, vClearcoatRoughnessMapUv ).y;
	#endif
	material.clearcoat = saturate( material.clearcoat );	material.clearcoatRoughness = max( material.clearcoatRoughness, 0.045 );
	material.clearcoatRoughness += geometryRoughness;
	material.clearcoatRoughness = min( material.clearcoatRoughness, 1.0 );
#endif
#ifdef USE_DISPERSION
	material.dispersion = dispersion;
#endif
#ifdef USE_RETROREFLECTION
	material.retroreflectivity = retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	material.iridescence = iridescence;
	material.iridescenceIOR = iridescenceIOR;
	#ifdef USE_IRIDESCENCEMAP
		material.iridescence *= texture2D( iridescenceMap, vIridescenceMapUv ).r;
	#endif
	#ifdef USE_IRIDESCENCE_THICKNESSMAP
		material.iridescenceThickness = (iridescenceThicknessMaximum - iridescenceThicknessMinimum) * texture2D( iridescenceThicknessMap, vIridescenceThicknessMapUv ).g + iridescenceThicknessMinimum;
	#else
		material.iridescenceThickness = iridescenceThicknessMaximum;
	#endif
#endif
#ifdef USE_SHEEN
	material.sheenColor = sheenColor;
	#ifdef USE_SHEEN_COLORMAP
		material.sheenColor *= texture2D( sheenColorMap, vSheenColorMapUv ).rgb;
	#endif
	material.sheenRoughness = clamp( sheenRoughness, 0.0001, 1.0 );
	#ifdef USE_SHEEN_ROUGHNESSMAP
		material.sheenRoughness *= texture2D( sheenRoughnessMap, vSheenRoughnessMapUv ).a;
	#endif
#endif
#ifdef USE_ANISOTROPY
	#ifdef USE_ANISOTROPYMAP
		mat2 anisotropyMat = mat2( anisotropyVector.x, anisotropyVector.y, - anisotropyVector.y, anisotropyVector.x );
		vec3 anisotropyPolar = texture2D( anisotropyMap, vAnisotropyMapUv ).rgb;
		vec2 anisotropyV = anisotropyMat * normalize( 2.0 * anisotropyPolar.rg - vec2( 1.0 ) ) * anisotropyPolar.b;
	#else
		vec2 anisotropyV = anisotropyVector;
	#endif
	material.anisotropy = length( anisotropyV );
	if( material.anisotropy == 0.0 ) {
		anisotropyV = vec2( 1.0, 0.0 );
	} else {
		anisotropyV /= material.anisotropy;
		material.anisotropy = saturate( material.anisotropy );
	}
	material.alphaT = mix( pow2( material.roughness ), 1.0, pow2( material.anisotropy ) );
	material.anisotropyT = tbn[ 0 ] * anisotropyV.x + tbn[ 1 ] * anisotropyV.y;
	material.anisotropyB = tbn[ 1 ] * anisotropyV.x - tbn[ 0 ] * anisotropyV.y;
#endif`,Jy=`uniform sampler2D dfgLUT;
struct PhysicalMaterial {
	vec3 diffuseColor;
	vec3 diffuseContribution;
	vec3 specularColor;
	vec3 specularColorBlended;
	float roughness;
	float metalness;
	float specularF90;
	float dispersion;
	vec2 dfg;
	vec3 multiScatteringCompensation;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float diffuseRoughness;
	#endif
	#ifdef USE_RETROREFLECTION
		float retroreflectivity;
	#endif
	#ifdef USE_CLEARCOAT
		float clearcoat;
		float clearcoatRoughness;
		vec3 clearcoatF0;
		float clearcoatF90;
	#endif
	#ifdef USE_IRIDESCENCE
		float iridescence;
		float iridescenceIOR;
		float iridescenceThickness;
		vec3 iridescenceFresnel;
		vec3 iridescenceF0Dielectric;
		vec3 iridescenceF0Metallic;
	#endif
	#ifdef USE_SHEEN
		vec3 sheenColor;
		float sheenRoughness;
	#endif
	#ifdef IOR
		float ior;
	#endif
	#ifdef USE_TRANSMISSION
		float transmission;
		float transmissionAlpha;
		float thickness;
		float attenuationDistance;
		vec3 attenuationColor;
	#endif
	#ifdef USE_ANISOTROPY
		float anisotropy;
		float alphaT;
		vec3 anisotropyT;
		vec3 anisotropyB;
	#endif
};
vec3 clearcoatSpecularDirect = vec3( 0.0 );
vec3 clearcoatSpecularIndirect = vec3( 0.0 );
vec3 sheenSpecularDirect = vec3( 0.0 );
vec3 sheenSpecularIndirect = vec3(0.0 );
vec3 Schlick_to_F0( const in vec3 f, const in float f90, const in float dotVH ) {
    float x = clamp( 1.0 - dotVH, 0.0, 1.0 );
    float x2 = x * x;
    float x5 = clamp( x * x2 * x2, 0.0, 0.9999 );
    return ( f - vec3( f90 ) * x5 ) / ( 1.0 - x5 );
}
#ifdef USE_DIFFUSE_ROUGHNESS
	const float EON_EPSILON = 1e-7;
	float FON_DirectionalAlbedo( const in float mu, const in float roughness, const in float A ) {
		float muComp = 1.0 - mu;
		float gOverPi = muComp * ( 0.0571085289 + muComp * ( 0.491881867 + muComp * ( - 0.332181442 + muComp * 0.0714429953 ) ) );
		return A * ( 1.0 + roughness * gOverPi );
	}
	vec3 BRDF_EON( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in vec3 diffuseColor, const in float roughness ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return BRDF_Lambert( rho );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float s = dot( lightDir, viewDir ) - dotNL * dotNV;
		float sOverT = ( s > 0.0 ) ? s / max( max( dotNL, dotNV ), EON_EPSILON ) : s;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		vec3 singleScatter = rho * RECIPROCAL_PI * A * ( 1.0 + roughness * sOverT );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		float albedoV = FON_DirectionalAlbedo( dotNV, roughness, A );
		float albedoL = FON_DirectionalAlbedo( dotNL, roughness, A );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		vec3 multiScatter = rhoMultiScatter * RECIPROCAL_PI
			* max( EON_EPSILON, 1.0 - albedoV )
			* max( EON_EPSILON, 1.0 - albedoL )
			/ max( EON_EPSILON, 1.0 - averageAlbedo );
		return singleScatter + multiScatter;
	}
	vec3 EON_DirectionalAlbedo( const in vec3 diffuseColor, const in float roughness, const in float dotNV ) {
		vec3 rho = saturate( diffuseColor );
		if ( roughness <= EON_EPSILON ) return rho;
		float A = 1.0 / ( 1.0 + ( 0.5 - 2.0 / ( 3.0 * PI ) ) * roughness );
		float directionalAlbedo = FON_DirectionalAlbedo( dotNV, roughness, A );
		float averageAlbedo = A * ( 1.0 + ( 2.0 / 3.0 - 28.0 / ( 15.0 * PI ) ) * roughness );
		vec3 rhoMultiScatter = rho * rho * averageAlbedo / max( vec3( EON_EPSILON ), vec3( 1.0 ) - rho * ( 1.0 - averageAlbedo ) );
		return rho * directionalAlbedo + rhoMultiScatter * ( 1.0 - directionalAlbedo );
	}
#endif
float V_GGX_SmithCorrelated( const in float alpha, const in float dotNL, const in float dotNV ) {
	float a2 = pow2( alpha );
	float gv = dotNL * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNV ) );
	float gl = dotNV * sqrt( a2 + ( 1.0 - a2 ) * pow2( dotNL ) );
	return 0.5 / max( gv + gl, EPSILON );
}
float D_GGX( const in float alpha, const in float dotNH ) {
	float a2 = pow2( alpha );
	float denom = pow2( dotNH ) * ( a2 - 1.0 ) + 1.0;
	return RECIPROCAL_PI * a2 / pow2( denom );
}
#ifdef USE_ANISOTROPY
	float V_GGX_SmithCorrelated_Anisotropic( const in float alphaT, const in float alphaB, const in float dotTV, const in float dotBV, const in float dotTL, const in float dotBL, const in float dotNV, const in float dotNL ) {
		float gv = dotNL * length( vec3( alphaT * dotTV, alphaB * dotBV, dotNV ) );
		float gl = dotNV * length( vec3( alphaT * dotTL, alphaB * dotBL, dotNL ) );
		return 0.5 / max( gv + gl, EPSILON );
	}
	float D_GGX_Anisotropic( const in float alphaT, const in float alphaB, const in float dotNH, const in float dotTH, const in float dotBH ) {
		float a2 = alphaT * alphaB;
		highp vec3 v = vec3( alphaB * dotTH, alphaT * dotBH, a2 * dotNH );
		highp float v2 = dot( v, v );
		float w2 = a2 / v2;
		return RECIPROCAL_PI * a2 * pow2 ( w2 );
	}
#endif
#ifdef USE_CLEARCOAT
	vec3 BRDF_GGX_Clearcoat( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material) {
		vec3 f0 = material.clearcoatF0;
		float f90 = material.clearcoatF90;
		float roughness = max( material.clearcoatRoughness, 0.045 );
		float alpha = pow2( roughness );
		vec3 halfDir = normalize( lightDir + viewDir );
		float dotNL = saturate( dot( normal, lightDir ) );
		float dotNV = saturate( dot( normal, viewDir ) );
		float dotNH = saturate( dot( normal, halfDir ) );
		float dotVH = saturate( dot( viewDir, halfDir ) );
		vec3 F = F_Schlick( f0, f90, dotVH );
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
		return F * ( V * D );
	}
#endif
vec3 BRDF_GGX( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, const in PhysicalMaterial material ) {
	vec3 f0 = material.specularColorBlended;
	float f90 = material.specularF90;
	float roughness = max( material.roughness, 0.045 );
	float alpha = pow2( roughness );
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float dotVH = saturate( dot( viewDir, halfDir ) );
	vec3 F = F_Schlick( f0, f90, dotVH );
	#ifdef USE_IRIDESCENCE
		F = mix( F, material.iridescenceFresnel, material.iridescence );
	#endif
	#ifdef USE_ANISOTROPY
		float dotTL = dot( material.anisotropyT, lightDir );
		float dotTV = dot( material.anisotropyT, viewDir );
		float dotTH = dot( material.anisotropyT, halfDir );
		float dotBL = dot( material.anisotropyB, lightDir );
		float dotBV = dot( material.anisotropyB, viewDir );
		float dotBH = dot( material.anisotropyB, halfDir );
		float alphaT = max( material.alphaT, alpha );
		float V = V_GGX_SmithCorrelated_Anisotropic( alphaT, alpha, dotTV, dotBV, dotTL, dotBL, dotNV, dotNL );
		float D = D_GGX_Anisotropic( alphaT, alpha, dotNH, dotTH, dotBH );
	#else
		float V = V_GGX_SmithCorrelated( alpha, dotNL, dotNV );
		float D = D_GGX( alpha, dotNH );
	#endif
	return F * ( V * D );
}
vec2 LTC_Uv( const in vec3 N, const in vec3 V, const in float roughness ) {
	const float LUT_SIZE = 64.0;
	const float LUT_SCALE = ( LUT_SIZE - 1.0 ) / LUT_SIZE;
	const float LUT_BIAS = 0.5 / LUT_SIZE;
	float dotNV = saturate( dot( N, V ) );
	vec2 uv = vec2( roughness, sqrt( 1.0 - dotNV ) );
	uv = uv * LUT_SCALE + LUT_BIAS;
	return uv;
}
float LTC_ClippedSphereFormFactor( const in vec3 f ) {
	float l = length( f );
	return max( ( l * l + f.z ) / ( l + 1.0 ), 0.0 );
}
vec3 LTC_EdgeVectorFormFactor( const in vec3 v1, const in vec3 v2 ) {
	float x = dot( v1, v2 );
	float y = abs( x );
	float a = 0.8543985 + ( 0.4965155 + 0.0145206 * y ) * y;
	float b = 3.4175940 + ( 4.1616724 + y ) * y;
	float v = a / b;
	float theta_sintheta = ( x > 0.0 ) ? v : 0.5 * inversesqrt( max( 1.0 - x * x, 1e-7 ) ) - v;
	return cross( v1, v2 ) * theta_sintheta;
}
vec3 LTC_Evaluate( const in vec3 N, const in vec3 V, const in vec3 P, const in mat3 mInv, const in vec3 rectCoords[ 4 ] ) {
	vec3 v1 = rectCoords[ 1 ] - rectCoords[ 0 ];
	vec3 v2 = rectCoords[ 3 ] - rectCoords[ 0 ];
	vec3 lightNormal = cross( v1, v2 );
	if( dot( lightNormal, P - rectCoords[ 0 ] ) < 0.0 ) return vec3( 0.0 );
	vec3 T1, T2;
	T1 = normalize( V - N * dot( V, N ) );
	T2 = - cross( N, T1 );
	mat3 mat = mInv * transpose( mat3( T1, T2, N ) );
	vec3 coords[ 4 ];
	coords[ 0 ] = mat * ( rectCoords[ 0 ] - P );
	coords[ 1 ] = mat * ( rectCoords[ 1 ] - P );
	coords[ 2 ] = mat * ( rectCoords[ 2 ] - P );
	coords[ 3 ] = mat * ( rectCoords[ 3 ] - P );
	coords[ 0 ] = normalize( coords[ 0 ] );
	coords[ 1 ] = normalize( coords[ 1 ] );
	coords[ 2 ] = normalize( coords[ 2 ] );
	coords[ 3 ] = normalize( coords[ 3 ] );
	vec3 vectorFormFactor = vec3( 0.0 );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 0 ], coords[ 1 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 1 ], coords[ 2 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 2 ], coords[ 3 ] );
	vectorFormFactor += LTC_EdgeVectorFormFactor( coords[ 3 ], coords[ 0 ] );
	float result = LTC_ClippedSphereFormFactor( vectorFormFactor );
	return vec3( result );
}
#if defined( USE_SHEEN )
float D_Charlie( float roughness, float dotNH ) {
	float alpha = pow2( roughness );
	float invAlpha = 1.0 / alpha;
	float cos2h = dotNH * dotNH;
	float sin2h = max( 1.0 - cos2h, 0.0078125 );
	return ( 2.0 + invAlpha ) * pow( sin2h, invAlpha * 0.5 ) / ( 2.0 * PI );
}
float V_Neubelt( float dotNV, float dotNL ) {
	return saturate( 1.0 / ( 4.0 * ( dotNL + dotNV - dotNL * dotNV ) ) );
}
vec3 BRDF_Sheen( const in vec3 lightDir, const in vec3 viewDir, const in vec3 normal, vec3 sheenColor, const in float sheenRoughness ) {
	vec3 halfDir = normalize( lightDir + viewDir );
	float dotNL = saturate( dot( normal, lightDir ) );
	float dotNV = saturate( dot( normal, viewDir ) );
	float dotNH = saturate( dot( normal, halfDir ) );
	float D = D_Charlie( sheenRoughness, dotNH );
	float V = V_Neubelt( dotNV, dotNL );
	return sheenColor * ( D * V );
}
#endif
float IBLSheenBRDF( const in vec3 normal, const in vec3 viewDir, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	float r2 = roughness * roughness;
	float rInv = 1.0 / ( roughness + 0.1 );
	float a = -1.9362 + 1.0678 * roughness + 0.4573 * r2 - 0.8469 * rInv;
	float b = -0.6014 + 0.5538 * roughness - 0.4670 * r2 - 0.1255 * rInv;
	float DG = exp( a * dotNV + b );
	return saturate( DG );
}
vec3 EnvironmentBRDF( const in vec3 normal, const in vec3 viewDir, const in vec3 specularColor, const in float specularF90, const in float roughness ) {
	float dotNV = saturate( dot( normal, viewDir ) );
	vec2 fab = texture2D( dfgLUT, vec2( roughness, dotNV ) ).rg;
	return specularColor * fab.x + specularF90 * fab.y;
}
#ifdef USE_IRIDESCENCE
void computeMultiscatteringIridescence( const in vec2 fab, const in vec3 specularColor, const in float specularF90, const in float iridescence, const in vec3 iridescenceF0, inout vec3 singleScatter, inout vec3 multiScatter ) {
#else
void computeMultiscattering( const in vec2 fab, const in vec3 specularColor, const in float specularF90, inout vec3 singleScatter, inout vec3 multiScatter ) {
#endif
	#ifdef USE_IRIDESCENCE
		vec3 Fr = mix( specularColor, iridescenceF0, iridescence );
	#else
		vec3 Fr = specularColor;
	#endif
	vec3 FssEss = Fr * fab.x + specularF90 * fab.y;
	float Ess = fab.x + fab.y;
	float Ems = 1.0 - Ess;
	vec3 Favg = Fr + ( 1.0 - Fr ) * 0.047619;	vec3 Fms = FssEss * Favg / ( 1.0 - Ems * Favg );
	singleScatter += FssEss;
	multiScatter += Fms * Ems;
}
#if NUM_RECT_AREA_LIGHTS > 0
	void RE_Direct_RectArea_Physical( const in RectAreaLight rectAreaLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
		vec3 normal = geometryNormal;
		vec3 viewDir = geometryViewDir;
		vec3 position = geometryPosition;
		vec3 lightPos = rectAreaLight.position;
		vec3 halfWidth = rectAreaLight.halfWidth;
		vec3 halfHeight = rectAreaLight.halfHeight;
		vec3 lightColor = rectAreaLight.color;
		float roughness = material.roughness;
		vec3 rectCoords[ 4 ];
		rectCoords[ 0 ] = lightPos + halfWidth - halfHeight;		rectCoords[ 1 ] = lightPos - halfWidth - halfHeight;
		rectCoords[ 2 ] = lightPos - halfWidth + halfHeight;
		rectCoords[ 3 ] = lightPos + halfWidth + halfHeight;
		vec2 uv = LTC_Uv( normal, viewDir, roughness );
		vec4 t1 = texture2D( ltc_1, uv );
		vec4 t2 = texture2D( ltc_2, uv );
		mat3 mInv = mat3(
			vec3( t1.x, 0, t1.y ),
			vec3(    0, 1,    0 ),
			vec3( t1.z, 0, t1.w )
		);
		vec3 fresnel = ( material.specularColorBlended * t2.x + ( material.specularF90 - material.specularColorBlended ) * t2.y );
		reflectedLight.directSpecular += lightColor * fresnel * LTC_Evaluate( normal, viewDir, position, mInv, rectCoords );
		reflectedLight.directDiffuse += lightColor * material.diffuseContribution * LTC_Evaluate( normal, viewDir, position, mat3( 1.0 ), rectCoords );
		#ifdef USE_CLEARCOAT
			vec3 Ncc = geometryClearcoatNormal;
			vec2 uvClearcoat = LTC_Uv( Ncc, viewDir, material.clearcoatRoughness );
			vec4 t1Clearcoat = texture2D( ltc_1, uvClearcoat );
			vec4 t2Clearcoat = texture2D( ltc_2, uvClearcoat );
			mat3 mInvClearcoat = mat3(
				vec3( t1Clearcoat.x, 0, t1Clearcoat.y ),
				vec3(             0, 1,             0 ),
				vec3( t1Clearcoat.z, 0, t1Clearcoat.w )
			);
			vec3 fresnelClearcoat = material.clearcoatF0 * t2Clearcoat.x + ( material.clearcoatF90 - material.clearcoatF0 ) * t2Clearcoat.y;
			clearcoatSpecularDirect += lightColor * fresnelClearcoat * LTC_Evaluate( Ncc, viewDir, position, mInvClearcoat, rectCoords );
		#endif
	}
#endif
void RE_Direct_Physical( const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	float dotNL = saturate( dot( geometryNormal, directLight.direction ) );
	vec3 irradiance = dotNL * directLight.color;
	#ifdef USE_CLEARCOAT
		float dotNLcc = saturate( dot( geometryClearcoatNormal, directLight.direction ) );
		vec3 ccIrradiance = dotNLcc * directLight.color;
		clearcoatSpecularDirect += ccIrradiance * BRDF_GGX_Clearcoat( directLight.direction, geometryViewDir, geometryClearcoatNormal, material );
	#endif
	#ifdef USE_SHEEN
 
 		sheenSpecularDirect += irradiance * BRDF_Sheen( directLight.direction, geometryViewDir, geometryNormal, material.sheenColor, material.sheenRoughness );
 
 		float sheenAlbedoV = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
 		float sheenAlbedoL = IBLSheenBRDF( geometryNormal, directLight.direction, material.sheenRoughness );
 
 		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * max( sheenAlbedoV, sheenAlbedoL );
 
 		irradiance *= sheenEnergyComp;
 
 	#endif
	vec3 specularBRDF = BRDF_GGX( directLight.direction, geometryViewDir, geometryNormal, material );
	#ifdef USE_RETROREFLECTION
		vec3 retroViewDir = reflect( - geometryViewDir, geometryNormal );
		vec3 retroSpecularBRDF = BRDF_GGX( directLight.direction, retroViewDir, geometryNormal, material );
		specularBRDF = mix( specularBRDF, retroSpecularBRDF, saturate( material.retroreflectivity ) );
	#endif
	reflectedLight.directSpecular += irradiance * specularBRDF * material.multiScatteringCompensation;
	vec3 halfDir = normalize( directLight.direction + geometryViewDir );
	float dotVH = saturate( dot( geometryViewDir, halfDir ) );
	vec3 F = F_Schlick( material.specularColor, material.specularF90, dotVH );
	#ifdef USE_RETROREFLECTION
		vec3 retroHalfDir = normalize( directLight.direction + retroViewDir );
		float dotRetroVH = saturate( dot( retroViewDir, retroHalfDir ) );
		vec3 retroF = F_Schlick( material.specularColor, material.specularF90, dotRetroVH );
		F = mix( F, retroF, saturate( material.retroreflectivity ) );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		vec3 diffuseBRDF = BRDF_EON( directLight.direction, geometryViewDir, geometryNormal, material.diffuseColor, material.diffuseRoughness ) * ( 1.0 - material.metalness );
	#else
		vec3 diffuseBRDF = BRDF_Lambert( material.diffuseContribution );
	#endif
	reflectedLight.directDiffuse += irradiance * diffuseBRDF * ( 1.0 - F );
}
void RE_IndirectDiffuse_Physical( const in vec3 irradiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight ) {
	vec3 singleScattering = vec3( 0.0 );
	vec3 multiScattering = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScattering, multiScattering );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScattering, multiScattering );
	#endif
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuseAlbedo = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness );
		vec3 diffuse = irradiance * RECIPROCAL_PI * diffuseAlbedo * ( 1.0 - singleScattering - multiScattering );
	#else
		vec3 diffuse = irradiance * BRDF_Lambert( material.diffuseContribution ) * ( 1.0 - singleScattering - multiScattering );
	#endif
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		sheenSpecularIndirect += irradiance * material.sheenColor * sheenAlbedo * RECIPROCAL_PI;
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		diffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectDiffuse += diffuse;
}
void RE_IndirectSpecular_Physical( const in vec3 radiance, const in vec3 irradiance, const in vec3 clearcoatRadiance, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
	#ifdef USE_CLEARCOAT
		clearcoatSpecularIndirect += clearcoatRadiance * EnvironmentBRDF( geometryClearcoatNormal, geometryViewDir, material.clearcoatF0, material.clearcoatF90, material.clearcoatRoughness );
	#endif
	#ifdef USE_SHEEN
		sheenSpecularIndirect += irradiance * material.sheenColor * IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness ) * RECIPROCAL_PI;
 	#endif
	vec3 singleScatteringDielectric = vec3( 0.0 );
	vec3 multiScatteringDielectric = vec3( 0.0 );
	vec3 singleScatteringMetallic = vec3( 0.0 );
	vec3 multiScatteringMetallic = vec3( 0.0 );
	#ifdef USE_IRIDESCENCE
		computeMultiscatteringIridescence( material.dfg, material.specularColor, material.specularF90, material.iridescence, material.iridescenceF0Dielectric, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscatteringIridescence( material.dfg, material.diffuseColor, material.specularF90, material.iridescence, material.iridescenceF0Metallic, singleScatteringMetallic, multiScatteringMetallic );
	#else
		computeMultiscattering( material.dfg, material.specularColor, material.specularF90, singleScatteringDielectric, multiScatteringDielectric );
		computeMultiscattering( material.dfg, material.diffuseColor, material.specularF90, singleScatteringMetallic, multiScatteringMetallic );
	#endif
	vec3 singleScattering = mix( singleScatteringDielectric, singleScatteringMetallic, material.metalness );
	vec3 multiScattering = mix( multiScatteringDielectric, multiScatteringMetallic, material.metalness );
	vec3 totalScatteringDielectric = singleScatteringDielectric + multiScatteringDielectric;
	#ifdef USE_DIFFUSE_ROUGHNESS
		float dotNV = saturate( dot( geometryNormal, geometryViewDir ) );
		vec3 diffuse = EON_DirectionalAlbedo( material.diffuseColor, material.diffuseRoughness, dotNV ) * ( 1.0 - material.metalness ) * ( 1.0 - totalScatteringDielectric );
	#else
		vec3 diffuse = material.diffuseContribution * ( 1.0 - totalScatteringDielectric );
	#endif
	vec3 cosineWeightedIrradiance = irradiance * RECIPROCAL_PI;
	vec3 indirectSpecular = radiance * singleScattering;
	indirectSpecular += multiScattering * cosineWeightedIrradiance;
	vec3 indirectDiffuse = diffuse * cosineWeightedIrradiance;
	#ifdef USE_SHEEN
		float sheenAlbedo = IBLSheenBRDF( geometryNormal, geometryViewDir, material.sheenRoughness );
		float sheenEnergyComp = 1.0 - max3( material.sheenColor ) * sheenAlbedo;
		indirectSpecular *= sheenEnergyComp;
		indirectDiffuse *= sheenEnergyComp;
	#endif
	reflectedLight.indirectSpecular += indirectSpecular;
	reflectedLight.indirectDiffuse += indirectDiffuse;
}
#define RE_Direct				RE_Direct_Physical
#define RE_Direct_RectArea		RE_Direct_RectArea_Physical
#define RE_IndirectDiffuse		RE_IndirectDiffuse_Physical
#define RE_IndirectSpecular		RE_IndirectSpecular_Physical
float computeSpecularOcclusion( const in float dotNV, const in float ambientOcclusion, const in float roughness ) {
	return saturate( pow( dotNV + ambientOcclusion, exp2( - 16.0 * roughness - 1.0 ) ) - 1.0 + ambientOcclusion );
}`,Ky=`
vec3 geometryPosition = - vViewPosition;
vec3 geometryNormal = normal;
vec3 geometryViewDir = ( isOrthographic ) ? vec3( 0, 0, 1 ) : normalize( vViewPosition );
vec3 geometryClearcoatNormal = vec3( 0.0 );
#ifdef USE_CLEARCOAT
	geometryClearcoatNormal = clearcoatNormal;
#endif
#ifdef USE_IRIDESCENCE
	float dotNVi = saturate( dot( normal, geometryViewDir ) );
	if ( material.iridescenceThickness == 0.0 ) {
		material.iridescence = 0.0;
	} else {
		material.iridescence = saturate( material.iridescence );
	}
	if ( material.iridescence > 0.0 ) {
		vec3 iridescenceFresnelDielectric = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.specularColor );
		vec3 iridescenceFresnelMetallic = evalIridescence( 1.0, material.iridescenceIOR, dotNVi, material.iridescenceThickness, material.diffuseColor );
		material.iridescenceFresnel = mix( iridescenceFresnelDielectric, iridescenceFresnelMetallic, material.metalness );
		material.iridescenceF0Dielectric = Schlick_to_F0( iridescenceFresnelDielectric, 1.0, dotNVi );
		material.iridescenceF0Metallic = Schlick_to_F0( iridescenceFresnelMetallic, 1.0, dotNVi );
	}
#endif
#ifdef STANDARD
	float dotNVms = saturate( dot( geometryNormal, geometryViewDir ) );
	material.dfg = texture2D( dfgLUT, vec2( material.roughness, dotNVms ) ).rg;
	#if ( NUM_SUN_LIGHTS > 0 || NUM_DIR_LIGHTS > 0 || NUM_POINT_LIGHTS > 0 || NUM_SPOT_LIGHTS > 0 )
		float EssMs = material.dfg.x + material.dfg.y;
		material.multiScatteringCompensation = 1.0 + material.specularColorBlended * ( 1.0 / EssMs - 1.0 );
	#endif
#endif
IncidentLight directLight;
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
	PointLight pointLight;
	#if defined( USE_SHADOWMAP ) && NUM_POINT_LIGHT_SHADOWS > 0
	PointLightShadow pointLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHTS; i ++ ) {
		pointLight = pointLights[ i ];
		getPointLightInfo( pointLight, geometryPosition, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_POINT_LIGHT_SHADOWS ) && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
		pointLightShadow = pointLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getPointShadow( pointShadowMap[ i ], pointLightShadow.shadowMapSize, pointLightShadow.shadowIntensity, pointLightShadow.shadowBias, pointLightShadow.shadowRadius, vPointShadowCoord[ i ], pointLightShadow.shadowCameraNear, pointLightShadow.shadowCameraFar ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
	SpotLight spotLight;
	vec4 spotColor;
	vec3 spotLightCoord;
	bool inSpotLightMap;
	#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHTS; i ++ ) {
		spotLight = spotLights[ i ];
		getSpotLightInfo( spotLight, geometryPosition, directLight );
		#if ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#define SPOT_LIGHT_MAP_INDEX UNROLLED_LOOP_INDEX
		#elif ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		#define SPOT_LIGHT_MAP_INDEX NUM_SPOT_LIGHT_MAPS
		#else
		#define SPOT_LIGHT_MAP_INDEX ( UNROLLED_LOOP_INDEX - NUM_SPOT_LIGHT_SHADOWS + NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS )
		#endif
		#if ( SPOT_LIGHT_MAP_INDEX < NUM_SPOT_LIGHT_MAPS )
			spotLightCoord = vSpotLightCoord[ i ].xyz / vSpotLightCoord[ i ].w;
			inSpotLightMap = all( lessThan( abs( spotLightCoord * 2. - 1. ), vec3( 1.0 ) ) );
			spotColor = texture2D( spotLightMap[ SPOT_LIGHT_MAP_INDEX ], spotLightCoord.xy );
			directLight.color = inSpotLightMap ? directLight.color * spotColor.rgb : directLight.color;
		#endif
		#undef SPOT_LIGHT_MAP_INDEX
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
		spotLightShadow = spotLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( spotShadowMap[ i ], spotLightShadow.shadowMapSize, spotLightShadow.shadowIntensity, spotLightShadow.shadowBias, spotLightShadow.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_SUN_LIGHTS > 0 ) && defined( RE_Direct )
	SunLight sunLight;
	#if defined( USE_SHADOWMAP ) && NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHTS; i ++ ) {
		sunLight = sunLights[ i ];
		getSunLightInfo( sunLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_SUN_LIGHT_SHADOWS )
		sunLightShadow = sunLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getSunShadow( sunShadowMap[ i ], sunLightShadow, UNROLLED_LOOP_INDEX ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_DIR_LIGHTS > 0 ) && defined( RE_Direct )
	DirectionalLight directionalLight;
	#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLightShadow;
	#endif
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHTS; i ++ ) {
		directionalLight = directionalLights[ i ];
		getDirectionalLightInfo( directionalLight, directLight );
		#if defined( USE_SHADOWMAP ) && ( UNROLLED_LOOP_INDEX < NUM_DIR_LIGHT_SHADOWS )
		directionalLightShadow = directionalLightShadows[ i ];
		directLight.color *= ( directLight.visible && receiveShadow ) ? getShadow( directionalShadowMap[ i ], directionalLightShadow.shadowMapSize, directionalLightShadow.shadowIntensity, directionalLightShadow.shadowBias, directionalLightShadow.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
		#endif
		RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if ( NUM_RECT_AREA_LIGHTS > 0 ) && defined( RE_Direct_RectArea )
	RectAreaLight rectAreaLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_RECT_AREA_LIGHTS; i ++ ) {
		rectAreaLight = rectAreaLights[ i ];
		RE_Direct_RectArea( rectAreaLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
	}
	#pragma unroll_loop_end
#endif
#if defined( RE_IndirectDiffuse )
	vec3 iblIrradiance = vec3( 0.0 );
	vec3 irradiance = getAmbientLightIrradiance( ambientLightColor );
	#if defined( USE_LIGHT_PROBES )
		irradiance += getLightProbeIrradiance( lightProbe, geometryNormal );
	#endif
	#if ( NUM_HEMI_LIGHTS > 0 )
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_HEMI_LIGHTS; i ++ ) {
			irradiance += getHemisphereLightIrradiance( hemisphereLights[ i ], geometryNormal );
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_LIGHT_PROBE_GRIDS > 0
		vec3 probeWorldPos = ( ( vec4( geometryPosition, 1.0 ) - viewMatrix[ 3 ] ) * viewMatrix ).xyz;
		vec3 probeWorldNormal = transformNormalByInverseViewMatrix( geometryNormal, viewMatrix );
		int probeGrid = - 1;
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( isInsideLightProbeGrid( probeWorldPos, probeWorldNormal, probesMin[ i ], probesMax[ i ], probesResolution[ i ] ) ) probeGrid = UNROLLED_LOOP_INDEX;
		}
		#pragma unroll_loop_end
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_LIGHT_PROBE_GRIDS; i ++ ) {
			if ( probeGrid == UNROLLED_LOOP_INDEX ) irradiance += getLightProbeGridIrradiance( probesSH[ i ], probesMin[ i ], probesMax[ i ], probesResolution[ i ], probeWorldPos, probeWorldNormal );
		}
		#pragma unroll_loop_end
	#endif
#endif
#if defined( RE_IndirectSpecular )
	vec3 radiance = vec3( 0.0 );
	vec3 clearcoatRadiance = vec3( 0.0 );
#endif`,jy=`#if defined( RE_IndirectDiffuse )
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		vec3 lightMapIrradiance = lightMapTexel.rgb * lightMapIntensity;
		irradiance += lightMapIrradiance;
	#endif
	#if defined( USE_ENVMAP ) && defined( ENVMAP_TYPE_PMREM )
		#if defined( STANDARD ) || defined( LAMBERT ) || defined( PHONG )
			iblIrradiance += getIBLIrradiance( geometryNormal );
		#endif
	#endif
#endif
#if defined( USE_ENVMAP ) && defined( RE_IndirectSpecular )
	#ifdef USE_ANISOTROPY
		vec3 iblRadiance = getIBLAnisotropyRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
	#else
		vec3 iblRadiance = getIBLRadiance( geometryViewDir, geometryNormal, material.roughness );
	#endif
	#ifdef USE_RETROREFLECTION
		#ifdef USE_ANISOTROPY
			vec3 retroIBLRadiance = getIBLAnisotropyRetroRadiance( geometryViewDir, geometryNormal, material.roughness, material.anisotropyB, material.anisotropy );
		#else
			vec3 retroIBLRadiance = getIBLRetroRadiance( geometryViewDir, geometryNormal, material.roughness );
		#endif
		iblRadiance = mix( iblRadiance, retroIBLRadiance, saturate( material.retroreflectivity ) );
	#endif
	radiance += iblRadiance;
	#ifdef USE_CLEARCOAT
		clearcoatRadiance += getIBLRadiance( geometryViewDir, geometryClearcoatNormal, material.clearcoatRoughness );
	#endif
#endif`,Qy=`#if defined( RE_IndirectDiffuse )
	#if defined( LAMBERT ) || defined( PHONG )
		irradiance += iblIrradiance;
	#endif
	RE_IndirectDiffuse( irradiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif
#if defined( RE_IndirectSpecular )
	RE_IndirectSpecular( radiance, iblIrradiance, clearcoatRadiance, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
#endif`,tv=`#if NUM_LIGHT_PROBE_GRIDS > 0
uniform highp sampler3D probesSH[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMin[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesMax[ NUM_LIGHT_PROBE_GRIDS ];
uniform vec3 probesResolution[ NUM_LIGHT_PROBE_GRIDS ];
bool isInsideLightProbeGrid( vec3 worldPos, vec3 worldNormal, vec3 probesMin, vec3 probesMax, vec3 probesResolution ) {
	vec3 spacing = ( probesMax - probesMin ) / probesResolution;
	vec3 samplePos = worldPos + worldNormal * spacing * 0.5;
	vec3 margin = spacing * 0.01;
	return all( greaterThanEqual( samplePos, probesMin - margin ) ) && all( lessThanEqual( samplePos, probesMax + margin ) );
}
vec3 getLightProbeGridIrradiance( highp sampler3D probesSH, vec3 probesMin, vec3 probesMax, vec3 probesResolution, vec3 worldPos, vec3 worldNormal ) {
	vec3 res = probesResolution;
	vec3 gridRange = probesMax - probesMin;
	vec3 probeSpacing = gridRange / res;
	vec3 samplePos = worldPos + worldNormal * probeSpacing * 0.5;
	vec3 uvw = clamp( ( samplePos - probesMin ) / gridRange, 0.5 / res, 1.0 - 0.5 / res );
	float nz          = res.z;
	float paddedSlices = nz + 2.0;
	float atlasDepth  = 7.0 * paddedSlices;
	float uvZBase     = uvw.z * nz + 1.0;
	vec4 s0 = texture( probesSH, vec3( uvw.xy, ( uvZBase                       ) / atlasDepth ) );
	vec4 s1 = texture( probesSH, vec3( uvw.xy, ( uvZBase +       paddedSlices   ) / atlasDepth ) );
	vec4 s2 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 2.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s3 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 3.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s4 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 4.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s5 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 5.0 * paddedSlices   ) / atlasDepth ) );
	vec4 s6 = texture( probesSH, vec3( uvw.xy, ( uvZBase + 6.0 * paddedSlices   ) / atlasDepth ) );
	vec3 c0 = s0.xyz;
	vec3 c1 = vec3( s0.w, s1.xy );
	vec3 c2 = vec3( s1.zw, s2.x );
	vec3 c3 = s2.yzw;
	vec3 c4 = s3.xyz;
	vec3 c5 = vec3( s3.w, s4.xy );
	vec3 c6 = vec3( s4.zw, s5.x );
	vec3 c7 = s5.yzw;
	vec3 c8 = s6.xyz;
	float x = worldNormal.x, y = worldNormal.y, z = worldNormal.z;
	vec3 result = c0 * 0.886227;
	result += c1 * 2.0 * 0.511664 * y;
	result += c2 * 2.0 * 0.511664 * z;
	result += c3 * 2.0 * 0.511664 * x;
	result += c4 * 2.0 * 0.429043 * x * y;
	result += c5 * 2.0 * 0.429043 * y * z;
	result += c6 * ( 0.743125 * z * z - 0.247708 );
	result += c7 * 2.0 * 0.429043 * x * z;
	result += c8 * 0.429043 * ( x * x - y * y );
	return max( result, vec3( 0.0 ) );
}
#endif`,ev=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	gl_FragDepth = vIsPerspective == 0.0 ? gl_FragCoord.z : log2( vFragDepth ) * logDepthBufFC * 0.5;
#endif`,nv=`#if defined( USE_LOGARITHMIC_DEPTH_BUFFER )
	uniform float logDepthBufFC;
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,iv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	varying float vFragDepth;
	varying float vIsPerspective;
#endif`,sv=`#ifdef USE_LOGARITHMIC_DEPTH_BUFFER
	vFragDepth = 1.0 + gl_Position.w;
	vIsPerspective = float( isPerspectiveMatrix( projectionMatrix ) );
#endif`,rv=`#ifdef USE_MAP
	vec4 sampledDiffuseColor = texture2D( map, vMapUv );
	#ifdef DECODE_VIDEO_TEXTURE
		sampledDiffuseColor = sRGBTransferEOTF( sampledDiffuseColor );
	#endif
	diffuseColor *= sampledDiffuseColor;
#endif`,ov=`#ifdef USE_MAP
	uniform sampler2D map;
#endif`,av=`#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
	#if defined( USE_POINTS_UV )
		vec2 uv = vUv;
	#else
		vec2 uv = ( uvTransform * vec3( gl_PointCoord.x, 1.0 - gl_PointCoord.y, 1 ) ).xy;
	#endif
#endif
#ifdef USE_MAP
	diffuseColor *= texture2D( map, uv );
#endif
#ifdef USE_ALPHAMAP
	diffuseColor.a *= texture2D( alphaMap, uv ).g;
#endif`,lv=`#if defined( USE_POINTS_UV )
	varying vec2 vUv;
#else
	#if defined( USE_MAP ) || defined( USE_ALPHAMAP )
		uniform mat3 uvTransform;
	#endif
#endif
#ifdef USE_MAP
	uniform sampler2D map;
#endif
#ifdef USE_ALPHAMAP
	uniform sampler2D alphaMap;
#endif`,cv=`float metalnessFactor = metalness;
#ifdef USE_METALNESSMAP
	vec4 texelMetalness = texture2D( metalnessMap, vMetalnessMapUv );
	metalnessFactor *= texelMetalness.b;
#endif`,hv=`#ifdef USE_METALNESSMAP
	uniform sampler2D metalnessMap;
#endif`,uv=`#ifdef USE_INSTANCING_MORPH
	float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	float morphTargetBaseInfluence = texelFetch( morphTexture, ivec2( 0, gl_InstanceID ), 0 ).r;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		morphTargetInfluences[i] =  texelFetch( morphTexture, ivec2( i + 1, gl_InstanceID ), 0 ).r;
	}
#endif`,dv=`#if defined( USE_MORPHCOLORS )
	#if defined( USE_COLOR_ALPHA )
		vColor *= morphTargetBaseInfluence;
	#elif defined( USE_COLOR )
		vColor.rgb *= morphTargetBaseInfluence;
	#endif
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		#if defined( USE_COLOR_ALPHA )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor += getMorph( gl_VertexID, i, 2 ) * morphTargetInfluences[ i ];
		#elif defined( USE_COLOR )
			if ( morphTargetInfluences[ i ] != 0.0 ) vColor.rgb += getMorph( gl_VertexID, i, 2 ).rgb * morphTargetInfluences[ i ];
		#endif
	}
#endif`,fv=`#ifdef USE_MORPHNORMALS
	objectNormal *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) objectNormal += getMorph( gl_VertexID, i, 1 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,pv=`#ifdef USE_MORPHTARGETS
	#ifndef USE_INSTANCING_MORPH
		uniform float morphTargetBaseInfluence;
		uniform float morphTargetInfluences[ MORPHTARGETS_COUNT ];
	#endif
	uniform sampler2DArray morphTargetsTexture;
	uniform ivec2 morphTargetsTextureSize;
	vec4 getMorph( const in int vertexIndex, const in int morphTargetIndex, const in int offset ) {
		int texelIndex = vertexIndex * MORPHTARGETS_TEXTURE_STRIDE + offset;
		int y = texelIndex / morphTargetsTextureSize.x;
		int x = texelIndex - y * morphTargetsTextureSize.x;
		ivec3 morphUV = ivec3( x, y, morphTargetIndex );
		return texelFetch( morphTargetsTexture, morphUV, 0 );
	}
#endif`,mv=`#ifdef USE_MORPHTARGETS
	transformed *= morphTargetBaseInfluence;
	for ( int i = 0; i < MORPHTARGETS_COUNT; i ++ ) {
		if ( morphTargetInfluences[ i ] != 0.0 ) transformed += getMorph( gl_VertexID, i, 0 ).xyz * morphTargetInfluences[ i ];
	}
#endif`,gv=`float faceDirection = gl_FrontFacing ? 1.0 : - 1.0;
#ifdef FLAT_SHADED
	vec3 fdx = dFdx( vViewPosition );
	vec3 fdy = dFdy( vViewPosition );
	vec3 normal = normalize( cross( fdx, fdy ) );
#else
	vec3 normal = normalize( vNormal );
	#ifdef DOUBLE_SIDED
		normal *= faceDirection;
	#endif
#endif
#if defined( USE_NORMALMAP_TANGENTSPACE ) || defined( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY )
	#ifdef USE_TANGENT
		mat3 tbn = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn = getTangentFrame( - vViewPosition, normal,
		#if defined( USE_NORMALMAP )
			vNormalMapUv
		#elif defined( USE_CLEARCOAT_NORMALMAP )
			vClearcoatNormalMapUv
		#else
			vUv
		#endif
		);
	#endif
	#ifdef DOUBLE_SIDED
		tbn[0] *= faceDirection;
		tbn[1] *= faceDirection;
	#endif
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	#ifdef USE_TANGENT
		mat3 tbn2 = mat3( normalize( vTangent ), normalize( vBitangent ), normal );
	#else
		mat3 tbn2 = getTangentFrame( - vViewPosition, normal, vClearcoatNormalMapUv );
	#endif
	#ifdef DOUBLE_SIDED
		tbn2[0] *= faceDirection;
		tbn2[1] *= faceDirection;
	#endif
#endif
vec3 nonPerturbedNormal = normal;`,_v=`#ifdef USE_NORMALMAP_OBJECTSPACE
	normal = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#ifdef FLIP_SIDED
		normal = - normal;
	#endif
	#ifdef DOUBLE_SIDED
		normal = normal * faceDirection;
	#endif
	normal = normalize( normalMatrix * normal );
#elif defined( USE_NORMALMAP_TANGENTSPACE )
	vec3 mapN = texture2D( normalMap, vNormalMapUv ).xyz * 2.0 - 1.0;
	#if defined( USE_PACKED_NORMALMAP )
		mapN = vec3( mapN.xy, sqrt( saturate( 1.0 - dot( mapN.xy, mapN.xy ) ) ) );
	#endif
	mapN.xy *= normalScale;
	normal = normalize( tbn * mapN );
#elif defined( USE_BUMPMAP )
	normal = perturbNormalArb( - vViewPosition, normal, dHdxy_fwd(), faceDirection );
#endif`,xv=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,yv=`#ifndef FLAT_SHADED
	varying vec3 vNormal;
	#ifdef USE_TANGENT
		varying vec3 vTangent;
		varying vec3 vBitangent;
	#endif
#endif`,vv=`#ifndef FLAT_SHADED
	vNormal = normalize( transformedNormal );
	#ifdef USE_TANGENT
		vTangent = normalize( transformedTangent );
		vBitangent = normalize( cross( vNormal, vTangent ) * tangent.w );
		#ifdef FLIP_SIDED
			vBitangent = - vBitangent;
		#endif
	#endif
#endif`,Mv=`#ifdef USE_NORMALMAP
	uniform sampler2D normalMap;
	uniform vec2 normalScale;
#endif
#ifdef USE_NORMALMAP_OBJECTSPACE
	uniform mat3 normalMatrix;
#endif
#if ! defined ( USE_TANGENT ) && ( defined ( USE_NORMALMAP_TANGENTSPACE ) || defined ( USE_CLEARCOAT_NORMALMAP ) || defined( USE_ANISOTROPY ) )
	mat3 getTangentFrame( vec3 eye_pos, vec3 surf_norm, vec2 uv ) {
		vec3 q0 = dFdx( eye_pos.xyz );
		vec3 q1 = dFdy( eye_pos.xyz );
		vec2 st0 = dFdx( uv.st );
		vec2 st1 = dFdy( uv.st );
		vec3 N = surf_norm;
		vec3 q1perp = cross( q1, N );
		vec3 q0perp = cross( N, q0 );
		vec3 T = q1perp * st0.x + q0perp * st1.x;
		vec3 B = q1perp * st0.y + q0perp * st1.y;
		float det = max( dot( T, T ), dot( B, B ) );
		float scale = ( det == 0.0 ) ? 0.0 : inversesqrt( det );
		return mat3( T * scale, B * scale, N );
	}
#endif`,Sv=`#ifdef USE_CLEARCOAT
	vec3 clearcoatNormal = nonPerturbedNormal;
#endif`,bv=`#ifdef USE_CLEARCOAT_NORMALMAP
	vec3 clearcoatMapN = texture2D( clearcoatNormalMap, vClearcoatNormalMapUv ).xyz * 2.0 - 1.0;
	clearcoatMapN.xy *= clearcoatNormalScale;
	clearcoatNormal = normalize( tbn2 * clearcoatMapN );
#endif`,wv=`#ifdef USE_CLEARCOATMAP
	uniform sampler2D clearcoatMap;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform sampler2D clearcoatNormalMap;
	uniform vec2 clearcoatNormalScale;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform sampler2D clearcoatRoughnessMap;
#endif`,Ev=`#ifdef USE_IRIDESCENCEMAP
	uniform sampler2D iridescenceMap;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform sampler2D iridescenceThicknessMap;
#endif`,Tv=`#ifdef OPAQUE
diffuseColor.a = 1.0;
#endif
#ifdef USE_TRANSMISSION
diffuseColor.a *= material.transmissionAlpha;
#endif
gl_FragColor = vec4( outgoingLight, diffuseColor.a );`,Av=`vec3 packNormalToRGB( const in vec3 normal ) {
	return normalize( normal ) * 0.5 + 0.5;
}
vec3 unpackRGBToNormal( const in vec3 rgb ) {
	return 2.0 * rgb.xyz - 1.0;
}
const float PackUpscale = 256. / 255.;const float UnpackDownscale = 255. / 256.;const float ShiftRight8 = 1. / 256.;
const float Inv255 = 1. / 255.;
const vec4 PackFactors = vec4( 1.0, 256.0, 256.0 * 256.0, 256.0 * 256.0 * 256.0 );
const vec2 UnpackFactors2 = vec2( UnpackDownscale, 1.0 / PackFactors.g );
const vec3 UnpackFactors3 = vec3( UnpackDownscale / PackFactors.rg, 1.0 / PackFactors.b );
const vec4 UnpackFactors4 = vec4( UnpackDownscale / PackFactors.rgb, 1.0 / PackFactors.a );
vec4 packDepthToRGBA( const in float v ) {
	if( v <= 0.0 )
		return vec4( 0., 0., 0., 0. );
	if( v >= 1.0 )
		return vec4( 1., 1., 1., 1. );
	float vuf;
	float af = modf( v * PackFactors.a, vuf );
	float bf = modf( vuf * ShiftRight8, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec4( vuf * Inv255, gf * PackUpscale, bf * PackUpscale, af );
}
vec3 packDepthToRGB( const in float v ) {
	if( v <= 0.0 )
		return vec3( 0., 0., 0. );
	if( v >= 1.0 )
		return vec3( 1., 1., 1. );
	float vuf;
	float bf = modf( v * PackFactors.b, vuf );
	float gf = modf( vuf * ShiftRight8, vuf );
	return vec3( vuf * Inv255, gf * PackUpscale, bf );
}
vec2 packDepthToRG( const in float v ) {
	if( v <= 0.0 )
		return vec2( 0., 0. );
	if( v >= 1.0 )
		return vec2( 1., 1. );
	float vuf;
	float gf = modf( v * 256., vuf );
	return vec2( vuf * Inv255, gf );
}
float unpackRGBAToDepth( const in vec4 v ) {
	return dot( v, UnpackFactors4 );
}
float unpackRGBToDepth( const in vec3 v ) {
	return dot( v, UnpackFactors3 );
}
float unpackRGToDepth( const in vec2 v ) {
	return v.r * UnpackFactors2.r + v.g * UnpackFactors2.g;
}
vec4 pack2HalfToRGBA( const in vec2 v ) {
	vec4 r = vec4( v.x, fract( v.x * 255.0 ), v.y, fract( v.y * 255.0 ) );
	return vec4( r.x - r.y / 255.0, r.y, r.z - r.w / 255.0, r.w );
}
vec2 unpackRGBATo2Half( const in vec4 v ) {
	return vec2( v.x + ( v.y / 255.0 ), v.z + ( v.w / 255.0 ) );
}
float viewZToOrthographicDepth( const in float viewZ, const in float near, const in float far ) {
	return ( viewZ + near ) / ( near - far );
}
float orthographicDepthToViewZ( const in float depth, const in float near, const in float far ) {
	#ifdef USE_REVERSED_DEPTH_BUFFER
	
		return depth * ( far - near ) - far;
	#else
		return depth * ( near - far ) - near;
	#endif
}
float viewZToPerspectiveDepth( const in float viewZ, const in float near, const in float far ) {
	return ( ( near + viewZ ) * far ) / ( ( far - near ) * viewZ );
}
float perspectiveDepthToViewZ( const in float depth, const in float near, const in float far ) {
	
	#ifdef USE_REVERSED_DEPTH_BUFFER
		return ( near * far ) / ( ( near - far ) * depth - near );
	#else
		return ( near * far ) / ( ( far - near ) * depth - far );
	#endif
}`,Rv=`#ifdef PREMULTIPLIED_ALPHA
	gl_FragColor.rgb *= gl_FragColor.a;
#endif`,Cv=`vec4 mvPosition = vec4( transformed, 1.0 );
#ifdef USE_BATCHING
	mvPosition = batchingMatrix * mvPosition;
#endif
#ifdef USE_INSTANCING
	mvPosition = instanceMatrix * mvPosition;
#endif
mvPosition = modelViewMatrix * mvPosition;
gl_Position = projectionMatrix * mvPosition;`,Pv=`#ifdef DITHERING
	gl_FragColor.rgb = dithering( gl_FragColor.rgb );
#endif`,Iv=`#ifdef DITHERING
	vec3 dithering( vec3 color ) {
		float grid_position = rand( gl_FragCoord.xy );
		vec3 dither_shift_RGB = vec3( 0.25 / 255.0, -0.25 / 255.0, 0.25 / 255.0 );
		dither_shift_RGB = mix( 2.0 * dither_shift_RGB, -2.0 * dither_shift_RGB, grid_position );
		return color + dither_shift_RGB;
	}
#endif`,Lv=`float roughnessFactor = roughness;
#ifdef USE_ROUGHNESSMAP
	vec4 texelRoughness = texture2D( roughnessMap, vRoughnessMapUv );
	roughnessFactor *= texelRoughness.g;
#endif`,Dv=`#ifdef USE_ROUGHNESSMAP
	uniform sampler2D roughnessMap;
#endif`,Nv=`#if NUM_SPOT_LIGHT_COORDS > 0
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#if NUM_SPOT_LIGHT_MAPS > 0
	uniform sampler2D spotLightMap[ NUM_SPOT_LIGHT_MAPS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		#define SUN_LIGHT_CASCADES 2
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#else
			uniform sampler2D sunShadowMap[ NUM_SUN_LIGHT_SHADOWS ];
		#endif
		uniform mat4 sunShadowMatrix[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		uniform vec4 sunShadowCascade[ NUM_SUN_LIGHT_SHADOWS * SUN_LIGHT_CASCADES ];
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
		struct SunLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SunLightShadow sunLightShadows[ NUM_SUN_LIGHT_SHADOWS ];
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#else
			uniform sampler2D directionalShadowMap[ NUM_DIR_LIGHT_SHADOWS ];
		#endif
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform sampler2DShadow spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#else
			uniform sampler2D spotShadowMap[ NUM_SPOT_LIGHT_SHADOWS ];
		#endif
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#if defined( SHADOWMAP_TYPE_PCF )
			uniform samplerCubeShadow pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#elif defined( SHADOWMAP_TYPE_BASIC )
			uniform samplerCube pointShadowMap[ NUM_POINT_LIGHT_SHADOWS ];
		#endif
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float interleavedGradientNoise( vec2 position ) {
			return fract( 52.9829189 * fract( dot( position, vec2( 0.06711056, 0.00583715 ) ) ) );
		}
		vec2 vogelDiskSample( int sampleIndex, int samplesCount, float phi ) {
			const float goldenAngle = 2.399963229728653;
			float r = sqrt( ( float( sampleIndex ) + 0.5 ) / float( samplesCount ) );
			float theta = float( sampleIndex ) * goldenAngle + phi;
			return vec2( cos( theta ), sin( theta ) ) * r;
		}
	#endif
	#if defined( SHADOWMAP_TYPE_PCF )
		float getShadow( sampler2DShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 texelSize = vec2( 1.0 ) / shadowMapSize;
				vec2 radius = shadowRadius * texelSize;
				float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
				shadow = (
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 0, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 1, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 2, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 3, 5, phi ) * radius, shadowCoord.z ) ) +
					texture( shadowMap, vec3( shadowCoord.xy + vogelDiskSample( 4, 5, phi ) * radius, shadowCoord.z ) )
				) * 0.2;
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#elif defined( SHADOWMAP_TYPE_VSM )
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				vec2 distribution = texture2D( shadowMap, shadowCoord.xy ).rg;
				float mean = distribution.x;
				float variance = distribution.y * distribution.y;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					float hard_shadow = step( mean, shadowCoord.z );
				#else
					float hard_shadow = step( shadowCoord.z, mean );
				#endif
				
				if ( hard_shadow == 1.0 ) {
					shadow = 1.0;
				} else {
					variance = max( variance, 0.0000001 );
					float d = shadowCoord.z - mean;
					float p_max = variance / ( variance + d * d );
					p_max = clamp( ( p_max - 0.3 ) / 0.65, 0.0, 1.0 );
					shadow = max( hard_shadow, p_max );
				}
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#else
		float getShadow( sampler2D shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord ) {
			float shadow = 1.0;
			shadowCoord.xyz /= shadowCoord.w;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				shadowCoord.z -= shadowBias;
			#else
				shadowCoord.z += shadowBias;
			#endif
			bool inFrustum = shadowCoord.x >= 0.0 && shadowCoord.x <= 1.0 && shadowCoord.y >= 0.0 && shadowCoord.y <= 1.0;
			bool frustumTest = inFrustum && shadowCoord.z <= 1.0;
			if ( frustumTest ) {
				float depth = texture2D( shadowMap, shadowCoord.xy ).r;
				#ifdef USE_REVERSED_DEPTH_BUFFER
					shadow = step( depth, shadowCoord.z );
				#else
					shadow = step( shadowCoord.z, depth );
				#endif
			}
			return mix( 1.0, shadow, shadowIntensity );
		}
	#endif
	#if NUM_SUN_LIGHT_SHADOWS > 0
		float getSunShadow(
			#if defined( SHADOWMAP_TYPE_PCF )
				sampler2DShadow shadowMap,
			#else
				sampler2D shadowMap,
			#endif
			SunLightShadow sunLightShadow,
			int shadowIndex
		) {
			vec4 shadowWorldPosition = vec4( vSunShadowWorldPosition.xyz + vSunShadowWorldNormal * sunLightShadow.shadowNormalBias, 1.0 );
			float viewDepth = vSunShadowWorldPosition.w;
			int cascadeOffset = shadowIndex * SUN_LIGHT_CASCADES;
			float shadow = 1.0;
			for ( int i = SUN_LIGHT_CASCADES - 1; i >= 0; i -- ) {
				vec4 cascade = sunShadowCascade[ cascadeOffset + i ];
				if ( viewDepth >= cascade.x && viewDepth < cascade.y ) {
					float cascadeShadow = getShadow(
						shadowMap,
						sunLightShadow.shadowMapSize,
						sunLightShadow.shadowIntensity,
						sunLightShadow.shadowBias,
						sunLightShadow.shadowRadius,
						sunShadowMatrix[ cascadeOffset + i ] * shadowWorldPosition
					);
					shadow = mix( cascadeShadow, shadow, smoothstep( cascade.z, cascade.y, viewDepth ) );
				}
			}
			return shadow;
		}
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
	#if defined( SHADOWMAP_TYPE_PCF )
	float getPointShadow( samplerCubeShadow shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 bd3D = normalize( lightToPosition );
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float lightDistance = length( lightToPosition );
			float depthRange = shadowCameraFar - shadowCameraNear;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				float depthA = - shadowCameraNear / depthRange - shadowBias;
				float depthB = shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#else
				float depthA = shadowCameraFar / depthRange + shadowBias;
				float depthB = - shadowCameraNear * shadowCameraFar / ( depthRange * lightDistance );
			#endif
			float texelSize = shadowRadius / shadowMapSize.x;
			vec3 absDir = abs( bd3D );
			vec3 tangent = absDir.x > absDir.z ? vec3( 0.0, 1.0, 0.0 ) : vec3( 1.0, 0.0, 0.0 );
			tangent = normalize( cross( bd3D, tangent ) );
			vec3 bitangent = cross( bd3D, tangent );
			float phi = interleavedGradientNoise( gl_FragCoord.xy ) * PI2;
			shadow = 0.0;
			for ( int i = 0; i < 5; i ++ ) {
				vec2 offset = vogelDiskSample( i, 5, phi );
				vec3 direction = bd3D + ( tangent * offset.x + bitangent * offset.y ) * texelSize;
				vec3 absDirection = abs( direction );
				float dp = depthA + depthB / max( max( absDirection.x, absDirection.y ), absDirection.z );
				shadow += texture( shadowMap, vec4( direction, dp ) );
			}
			shadow *= 0.2;
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#elif defined( SHADOWMAP_TYPE_BASIC )
	float getPointShadow( samplerCube shadowMap, vec2 shadowMapSize, float shadowIntensity, float shadowBias, float shadowRadius, vec4 shadowCoord, float shadowCameraNear, float shadowCameraFar ) {
		float shadow = 1.0;
		vec3 lightToPosition = shadowCoord.xyz;
		vec3 absVec = abs( lightToPosition );
		float viewSpaceZ = max( max( absVec.x, absVec.y ), absVec.z );
		if ( viewSpaceZ - shadowCameraFar <= 0.0 && viewSpaceZ - shadowCameraNear >= 0.0 ) {
			float dp = ( shadowCameraFar * ( viewSpaceZ - shadowCameraNear ) ) / ( viewSpaceZ * ( shadowCameraFar - shadowCameraNear ) );
			dp += shadowBias;
			vec3 bd3D = normalize( lightToPosition );
			float depth = textureCube( shadowMap, bd3D ).r;
			#ifdef USE_REVERSED_DEPTH_BUFFER
				depth = 1.0 - depth;
			#endif
			shadow = step( dp, depth );
		}
		return mix( 1.0, shadow, shadowIntensity );
	}
	#endif
	#endif
#endif`,Uv=`#if NUM_SPOT_LIGHT_COORDS > 0
	uniform mat4 spotLightMatrix[ NUM_SPOT_LIGHT_COORDS ];
	varying vec4 vSpotLightCoord[ NUM_SPOT_LIGHT_COORDS ];
#endif
#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
		varying vec4 vSunShadowWorldPosition;
		varying vec3 vSunShadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		uniform mat4 directionalShadowMatrix[ NUM_DIR_LIGHT_SHADOWS ];
		varying vec4 vDirectionalShadowCoord[ NUM_DIR_LIGHT_SHADOWS ];
		struct DirectionalLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform DirectionalLightShadow directionalLightShadows[ NUM_DIR_LIGHT_SHADOWS ];
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
		struct SpotLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
		};
		uniform SpotLightShadow spotLightShadows[ NUM_SPOT_LIGHT_SHADOWS ];
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		uniform mat4 pointShadowMatrix[ NUM_POINT_LIGHT_SHADOWS ];
		varying vec4 vPointShadowCoord[ NUM_POINT_LIGHT_SHADOWS ];
		struct PointLightShadow {
			float shadowIntensity;
			float shadowBias;
			float shadowNormalBias;
			float shadowRadius;
			vec2 shadowMapSize;
			float shadowCameraNear;
			float shadowCameraFar;
		};
		uniform PointLightShadow pointLightShadows[ NUM_POINT_LIGHT_SHADOWS ];
	#endif
#endif`,Fv=`#if ( defined( USE_SHADOWMAP ) && ( NUM_DIR_LIGHT_SHADOWS > 0 || NUM_SUN_LIGHT_SHADOWS > 0 || NUM_POINT_LIGHT_SHADOWS > 0 ) ) || ( NUM_SPOT_LIGHT_COORDS > 0 )
	#ifdef HAS_NORMAL
		vec3 shadowWorldNormal = transformNormalByInverseViewMatrix( transformedNormal, viewMatrix );
	#else
		vec3 shadowWorldNormal = vec3( 0.0 );
	#endif
	vec4 shadowWorldPosition;
#endif
#if defined( USE_SHADOWMAP )
	#if NUM_SUN_LIGHT_SHADOWS > 0
		vSunShadowWorldPosition = vec4( worldPosition.xyz, - mvPosition.z );
		vSunShadowWorldNormal = shadowWorldNormal;
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * directionalLightShadows[ i ].shadowNormalBias, 0 );
			vDirectionalShadowCoord[ i ] = directionalShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0
		#pragma unroll_loop_start
		for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
			shadowWorldPosition = worldPosition + vec4( shadowWorldNormal * pointLightShadows[ i ].shadowNormalBias, 0 );
			vPointShadowCoord[ i ] = pointShadowMatrix[ i ] * shadowWorldPosition;
		}
		#pragma unroll_loop_end
	#endif
#endif
#if NUM_SPOT_LIGHT_COORDS > 0
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_COORDS; i ++ ) {
		shadowWorldPosition = worldPosition;
		#if ( defined( USE_SHADOWMAP ) && UNROLLED_LOOP_INDEX < NUM_SPOT_LIGHT_SHADOWS )
			shadowWorldPosition.xyz += shadowWorldNormal * spotLightShadows[ i ].shadowNormalBias;
		#endif
		vSpotLightCoord[ i ] = spotLightMatrix[ i ] * shadowWorldPosition;
	}
	#pragma unroll_loop_end
#endif`,Ov=`float getShadowMask() {
	float shadow = 1.0;
	#ifdef USE_SHADOWMAP
	#if NUM_SUN_LIGHT_SHADOWS > 0
	SunLightShadow sunLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SUN_LIGHT_SHADOWS; i ++ ) {
		sunLight = sunLightShadows[ i ];
		shadow *= receiveShadow ? getSunShadow( sunShadowMap[ i ], sunLight, UNROLLED_LOOP_INDEX ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_DIR_LIGHT_SHADOWS > 0
	DirectionalLightShadow directionalLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_DIR_LIGHT_SHADOWS; i ++ ) {
		directionalLight = directionalLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( directionalShadowMap[ i ], directionalLight.shadowMapSize, directionalLight.shadowIntensity, directionalLight.shadowBias, directionalLight.shadowRadius, vDirectionalShadowCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_SPOT_LIGHT_SHADOWS > 0
	SpotLightShadow spotLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
		spotLight = spotLightShadows[ i ];
		shadow *= receiveShadow ? getShadow( spotShadowMap[ i ], spotLight.shadowMapSize, spotLight.shadowIntensity, spotLight.shadowBias, spotLight.shadowRadius, vSpotLightCoord[ i ] ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#if NUM_POINT_LIGHT_SHADOWS > 0 && ( defined( SHADOWMAP_TYPE_PCF ) || defined( SHADOWMAP_TYPE_BASIC ) )
	PointLightShadow pointLight;
	#pragma unroll_loop_start
	for ( int i = 0; i < NUM_POINT_LIGHT_SHADOWS; i ++ ) {
		pointLight = pointLightShadows[ i ];
		shadow *= receiveShadow ? getPointShadow( pointShadowMap[ i ], pointLight.shadowMapSize, pointLight.shadowIntensity, pointLight.shadowBias, pointLight.shadowRadius, vPointShadowCoord[ i ], pointLight.shadowCameraNear, pointLight.shadowCameraFar ) : 1.0;
	}
	#pragma unroll_loop_end
	#endif
	#endif
	return shadow;
}`,Bv=`#ifdef USE_SKINNING
	mat4 boneMatX = getBoneMatrix( skinIndex.x );
	mat4 boneMatY = getBoneMatrix( skinIndex.y );
	mat4 boneMatZ = getBoneMatrix( skinIndex.z );
	mat4 boneMatW = getBoneMatrix( skinIndex.w );
#endif`,kv=`#ifdef USE_SKINNING
	uniform mat4 bindMatrix;
	uniform mat4 bindMatrixInverse;
	uniform highp sampler2D boneTexture;
	mat4 getBoneMatrix( const in float i ) {
		int size = textureSize( boneTexture, 0 ).x;
		int j = int( i ) * 4;
		int x = j % size;
		int y = j / size;
		vec4 v1 = texelFetch( boneTexture, ivec2( x, y ), 0 );
		vec4 v2 = texelFetch( boneTexture, ivec2( x + 1, y ), 0 );
		vec4 v3 = texelFetch( boneTexture, ivec2( x + 2, y ), 0 );
		vec4 v4 = texelFetch( boneTexture, ivec2( x + 3, y ), 0 );
		return mat4( v1, v2, v3, v4 );
	}
#endif`,zv=`#ifdef USE_SKINNING
	vec4 skinVertex = bindMatrix * vec4( transformed, 1.0 );
	vec4 skinned = vec4( 0.0 );
	skinned += boneMatX * skinVertex * skinWeight.x;
	skinned += boneMatY * skinVertex * skinWeight.y;
	skinned += boneMatZ * skinVertex * skinWeight.z;
	skinned += boneMatW * skinVertex * skinWeight.w;
	transformed = ( bindMatrixInverse * skinned ).xyz;
#endif`,Vv=`#ifdef USE_SKINNING
	mat4 skinMatrix = mat4( 0.0 );
	skinMatrix += skinWeight.x * boneMatX;
	skinMatrix += skinWeight.y * boneMatY;
	skinMatrix += skinWeight.z * boneMatZ;
	skinMatrix += skinWeight.w * boneMatW;
	skinMatrix = bindMatrixInverse * skinMatrix * bindMatrix;
	objectNormal = vec4( skinMatrix * vec4( objectNormal, 0.0 ) ).xyz;
	#ifdef USE_TANGENT
		objectTangent = vec4( skinMatrix * vec4( objectTangent, 0.0 ) ).xyz;
	#endif
#endif`,Gv=`float specularStrength;
#ifdef USE_SPECULARMAP
	vec4 texelSpecular = texture2D( specularMap, vSpecularMapUv );
	specularStrength = texelSpecular.r;
#else
	specularStrength = 1.0;
#endif`,Hv=`#ifdef USE_SPECULARMAP
	uniform sampler2D specularMap;
#endif`,Wv=`#if defined( TONE_MAPPING )
	gl_FragColor.rgb = toneMapping( gl_FragColor.rgb );
#endif`,Xv=`#ifndef saturate
#define saturate( a ) clamp( a, 0.0, 1.0 )
#endif
uniform float toneMappingExposure;
vec3 LinearToneMapping( vec3 color ) {
	return saturate( toneMappingExposure * color );
}
vec3 ReinhardToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	return saturate( color / ( vec3( 1.0 ) + color ) );
}
vec3 CineonToneMapping( vec3 color ) {
	color *= toneMappingExposure;
	color = max( vec3( 0.0 ), color - 0.004 );
	return pow( ( color * ( 6.2 * color + 0.5 ) ) / ( color * ( 6.2 * color + 1.7 ) + 0.06 ), vec3( 2.2 ) );
}
vec3 RRTAndODTFit( vec3 v ) {
	vec3 a = v * ( v + 0.0245786 ) - 0.000090537;
	vec3 b = v * ( 0.983729 * v + 0.4329510 ) + 0.238081;
	return a / b;
}
vec3 ACESFilmicToneMapping( vec3 color ) {
	const mat3 ACESInputMat = mat3(
		vec3( 0.59719, 0.07600, 0.02840 ),		vec3( 0.35458, 0.90834, 0.13383 ),
		vec3( 0.04823, 0.01566, 0.83777 )
	);
	const mat3 ACESOutputMat = mat3(
		vec3(  1.60475, -0.10208, -0.00327 ),		vec3( -0.53108,  1.10813, -0.07276 ),
		vec3( -0.07367, -0.00605,  1.07602 )
	);
	color *= toneMappingExposure / 0.6;
	color = ACESInputMat * color;
	color = RRTAndODTFit( color );
	color = ACESOutputMat * color;
	return saturate( color );
}
const mat3 LINEAR_REC2020_TO_LINEAR_SRGB = mat3(
	vec3( 1.6605, - 0.1246, - 0.0182 ),
	vec3( - 0.5876, 1.1329, - 0.1006 ),
	vec3( - 0.0728, - 0.0083, 1.1187 )
);
const mat3 LINEAR_SRGB_TO_LINEAR_REC2020 = mat3(
	vec3( 0.6274, 0.0691, 0.0164 ),
	vec3( 0.3293, 0.9195, 0.0880 ),
	vec3( 0.0433, 0.0113, 0.8956 )
);
vec3 agxDefaultContrastApprox( vec3 x ) {
	vec3 x2 = x * x;
	vec3 x4 = x2 * x2;
	return + 15.5 * x4 * x2
		- 40.14 * x4 * x
		+ 31.96 * x4
		- 6.868 * x2 * x
		+ 0.4298 * x2
		+ 0.1191 * x
		- 0.00232;
}
vec3 AgXToneMapping( vec3 color ) {
	const mat3 AgXInsetMatrix = mat3(
		vec3( 0.856627153315983, 0.137318972929847, 0.11189821299995 ),
		vec3( 0.0951212405381588, 0.761241990602591, 0.0767994186031903 ),
		vec3( 0.0482516061458583, 0.101439036467562, 0.811302368396859 )
	);
	const mat3 AgXOutsetMatrix = mat3(
		vec3( 1.1271005818144368, - 0.1413297634984383, - 0.14132976349843826 ),
		vec3( - 0.11060664309660323, 1.157823702216272, - 0.11060664309660294 ),
		vec3( - 0.016493938717834573, - 0.016493938717834257, 1.2519364065950405 )
	);
	const float AgxMinEv = - 12.47393;	const float AgxMaxEv = 4.026069;
	color *= toneMappingExposure;
	color = LINEAR_SRGB_TO_LINEAR_REC2020 * color;
	color = AgXInsetMatrix * color;
	color = max( color, 1e-10 );	color = log2( color );
	color = ( color - AgxMinEv ) / ( AgxMaxEv - AgxMinEv );
	color = clamp( color, 0.0, 1.0 );
	color = agxDefaultContrastApprox( color );
	color = AgXOutsetMatrix * color;
	color = pow( max( vec3( 0.0 ), color ), vec3( 2.2 ) );
	color = LINEAR_REC2020_TO_LINEAR_SRGB * color;
	color = clamp( color, 0.0, 1.0 );
	return color;
}
vec3 NeutralToneMapping( vec3 color ) {
	const float StartCompression = 0.8 - 0.04;
	const float Desaturation = 0.15;
	color *= toneMappingExposure;
	float x = min( color.r, min( color.g, color.b ) );
	float offset = x < 0.08 ? x - 6.25 * x * x : 0.04;
	color -= offset;
	float peak = max( color.r, max( color.g, color.b ) );
	if ( peak < StartCompression ) return color;
	float d = 1. - StartCompression;
	float newPeak = 1. - d * d / ( peak + d - StartCompression );
	color *= newPeak / peak;
	float g = 1. - 1. / ( Desaturation * ( peak - newPeak ) + 1. );
	return mix( color, vec3( newPeak ), g );
}
vec3 CustomToneMapping( vec3 color ) { return color; }`,qv=`#ifdef USE_TRANSMISSION
	material.transmission = transmission;
	material.transmissionAlpha = 1.0;
	material.thickness = thickness;
	material.attenuationDistance = attenuationDistance;
	material.attenuationColor = attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		material.transmission *= texture2D( transmissionMap, vTransmissionMapUv ).r;
	#endif
	#ifdef USE_THICKNESSMAP
		material.thickness *= texture2D( thicknessMap, vThicknessMapUv ).g;
	#endif
	vec3 pos = vWorldPosition;
	vec3 v = normalize( cameraPosition - pos );
	vec3 n = transformNormalByInverseViewMatrix( normal, viewMatrix );
	vec4 transmitted = getIBLVolumeRefraction(
		n, v, material.roughness, material.diffuseContribution, material.specularColorBlended, material.specularF90,
		pos, modelMatrix, viewMatrix, projectionMatrix, material.dispersion, material.ior, material.thickness,
		material.attenuationColor, material.attenuationDistance );
	material.transmissionAlpha = mix( material.transmissionAlpha, transmitted.a, material.transmission );
	totalDiffuse = mix( totalDiffuse, transmitted.rgb, material.transmission );
#endif`,Yv=`#ifdef USE_TRANSMISSION
	uniform float transmission;
	uniform float thickness;
	uniform float attenuationDistance;
	uniform vec3 attenuationColor;
	#ifdef USE_TRANSMISSIONMAP
		uniform sampler2D transmissionMap;
	#endif
	#ifdef USE_THICKNESSMAP
		uniform sampler2D thicknessMap;
	#endif
	uniform vec2 transmissionSamplerSize;
	uniform sampler2D transmissionSamplerMap;
	uniform mat4 modelMatrix;
	uniform mat4 projectionMatrix;
	varying vec3 vWorldPosition;
	float w0( float a ) {
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - a + 3.0 ) - 3.0 ) + 1.0 );
	}
	float w1( float a ) {
		return ( 1.0 / 6.0 ) * ( a *  a * ( 3.0 * a - 6.0 ) + 4.0 );
	}
	float w2( float a ){
		return ( 1.0 / 6.0 ) * ( a * ( a * ( - 3.0 * a + 3.0 ) + 3.0 ) + 1.0 );
	}
	float w3( float a ) {
		return ( 1.0 / 6.0 ) * ( a * a * a );
	}
	float g0( float a ) {
		return w0( a ) + w1( a );
	}
	float g1( float a ) {
		return w2( a ) + w3( a );
	}
	float h0( float a ) {
		return - 1.0 + w1( a ) / ( w0( a ) + w1( a ) );
	}
	float h1( float a ) {
		return 1.0 + w3( a ) / ( w2( a ) + w3( a ) );
	}
	vec4 bicubic( sampler2D tex, vec2 uv, vec4 texelSize, float lod ) {
		uv = uv * texelSize.zw + 0.5;
		vec2 iuv = floor( uv );
		vec2 fuv = fract( uv );
		float g0x = g0( fuv.x );
		float g1x = g1( fuv.x );
		float h0x = h0( fuv.x );
		float h1x = h1( fuv.x );
		float h0y = h0( fuv.y );
		float h1y = h1( fuv.y );
		vec2 p0 = ( vec2( iuv.x + h0x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p1 = ( vec2( iuv.x + h1x, iuv.y + h0y ) - 0.5 ) * texelSize.xy;
		vec2 p2 = ( vec2( iuv.x + h0x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		vec2 p3 = ( vec2( iuv.x + h1x, iuv.y + h1y ) - 0.5 ) * texelSize.xy;
		return g0( fuv.y ) * ( g0x * textureLod( tex, p0, lod ) + g1x * textureLod( tex, p1, lod ) ) +
			g1( fuv.y ) * ( g0x * textureLod( tex, p2, lod ) + g1x * textureLod( tex, p3, lod ) );
	}
	vec4 textureBicubic( sampler2D sampler, vec2 uv, float lod ) {
		vec2 fLodSize = vec2( textureSize( sampler, int( lod ) ) );
		vec2 cLodSize = vec2( textureSize( sampler, int( lod + 1.0 ) ) );
		vec2 fLodSizeInv = 1.0 / fLodSize;
		vec2 cLodSizeInv = 1.0 / cLodSize;
		vec4 fSample = bicubic( sampler, uv, vec4( fLodSizeInv, fLodSize ), floor( lod ) );
		vec4 cSample = bicubic( sampler, uv, vec4( cLodSizeInv, cLodSize ), ceil( lod ) );
		return mix( fSample, cSample, fract( lod ) );
	}
	vec3 getVolumeTransmissionRay( const in vec3 n, const in vec3 v, const in float thickness, const in float ior, const in mat4 modelMatrix ) {
		vec3 refractionVector = refract( - v, normalize( n ), 1.0 / ior );
		vec3 modelScale;
		modelScale.x = length( vec3( modelMatrix[ 0 ].xyz ) );
		modelScale.y = length( vec3( modelMatrix[ 1 ].xyz ) );
		modelScale.z = length( vec3( modelMatrix[ 2 ].xyz ) );
		return normalize( refractionVector ) * thickness * modelScale;
	}
	float applyIorToRoughness( const in float roughness, const in float ior ) {
		return roughness * clamp( ior * 2.0 - 2.0, 0.0, 1.0 );
	}
	vec4 getTransmissionSample( const in vec2 fragCoord, const in float roughness, const in float ior ) {
		float lod = log2( transmissionSamplerSize.x ) * applyIorToRoughness( roughness, ior );
		return textureBicubic( transmissionSamplerMap, fragCoord.xy, lod );
	}
	vec3 volumeAttenuation( const in float transmissionDistance, const in vec3 attenuationColor, const in float attenuationDistance ) {
		if ( isinf( attenuationDistance ) ) {
			return vec3( 1.0 );
		} else {
			vec3 attenuationCoefficient = -log( attenuationColor ) / attenuationDistance;
			vec3 transmittance = exp( - attenuationCoefficient * transmissionDistance );			return transmittance;
		}
	}
	vec4 getIBLVolumeRefraction( const in vec3 n, const in vec3 v, const in float roughness, const in vec3 diffuseColor,
		const in vec3 specularColor, const in float specularF90, const in vec3 position, const in mat4 modelMatrix,
		const in mat4 viewMatrix, const in mat4 projMatrix, const in float dispersion, const in float ior, const in float thickness,
		const in vec3 attenuationColor, const in float attenuationDistance ) {
		vec4 transmittedLight;
		vec3 transmittance;
		#ifdef USE_DISPERSION
			float halfSpread = ( ior - 1.0 ) * 0.025 * dispersion;
			vec3 iors = vec3( ior - halfSpread, ior, ior + halfSpread );
			for ( int i = 0; i < 3; i ++ ) {
				vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, iors[ i ], modelMatrix );
				vec3 refractedRayExit = position + transmissionRay;
				vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
				vec2 refractionCoords = ndcPos.xy / ndcPos.w;
				refractionCoords += 1.0;
				refractionCoords /= 2.0;
				vec4 transmissionSample = getTransmissionSample( refractionCoords, roughness, iors[ i ] );
				transmittedLight[ i ] = transmissionSample[ i ];
				transmittedLight.a += transmissionSample.a;
				transmittance[ i ] = diffuseColor[ i ] * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance )[ i ];
			}
			transmittedLight.a /= 3.0;
		#else
			vec3 transmissionRay = getVolumeTransmissionRay( n, v, thickness, ior, modelMatrix );
			vec3 refractedRayExit = position + transmissionRay;
			vec4 ndcPos = projMatrix * viewMatrix * vec4( refractedRayExit, 1.0 );
			vec2 refractionCoords = ndcPos.xy / ndcPos.w;
			refractionCoords += 1.0;
			refractionCoords /= 2.0;
			transmittedLight = getTransmissionSample( refractionCoords, roughness, ior );
			transmittance = diffuseColor * volumeAttenuation( length( transmissionRay ), attenuationColor, attenuationDistance );
		#endif
		vec3 attenuatedColor = transmittance * transmittedLight.rgb;
		vec3 F = EnvironmentBRDF( n, v, specularColor, specularF90, roughness );
		float transmittanceFactor = ( transmittance.r + transmittance.g + transmittance.b ) / 3.0;
		return vec4( ( 1.0 - F ) * attenuatedColor, 1.0 - ( 1.0 - transmittedLight.a ) * transmittanceFactor );
	}
#endif`,$v=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_SPECULARMAP
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Zv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	varying vec2 vUv;
#endif
#ifdef USE_MAP
	uniform mat3 mapTransform;
	varying vec2 vMapUv;
#endif
#ifdef USE_ALPHAMAP
	uniform mat3 alphaMapTransform;
	varying vec2 vAlphaMapUv;
#endif
#ifdef USE_LIGHTMAP
	uniform mat3 lightMapTransform;
	varying vec2 vLightMapUv;
#endif
#ifdef USE_AOMAP
	uniform mat3 aoMapTransform;
	varying vec2 vAoMapUv;
#endif
#ifdef USE_BUMPMAP
	uniform mat3 bumpMapTransform;
	varying vec2 vBumpMapUv;
#endif
#ifdef USE_NORMALMAP
	uniform mat3 normalMapTransform;
	varying vec2 vNormalMapUv;
#endif
#ifdef USE_DISPLACEMENTMAP
	uniform mat3 displacementMapTransform;
	varying vec2 vDisplacementMapUv;
#endif
#ifdef USE_EMISSIVEMAP
	uniform mat3 emissiveMapTransform;
	varying vec2 vEmissiveMapUv;
#endif
#ifdef USE_METALNESSMAP
	uniform mat3 metalnessMapTransform;
	varying vec2 vMetalnessMapUv;
#endif
#ifdef USE_ROUGHNESSMAP
	uniform mat3 roughnessMapTransform;
	varying vec2 vRoughnessMapUv;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	uniform mat3 diffuseRoughnessMapTransform;
	varying vec2 vDiffuseRoughnessMapUv;
#endif
#ifdef USE_ANISOTROPYMAP
	uniform mat3 anisotropyMapTransform;
	varying vec2 vAnisotropyMapUv;
#endif
#ifdef USE_CLEARCOATMAP
	uniform mat3 clearcoatMapTransform;
	varying vec2 vClearcoatMapUv;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	uniform mat3 clearcoatNormalMapTransform;
	varying vec2 vClearcoatNormalMapUv;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	uniform mat3 clearcoatRoughnessMapTransform;
	varying vec2 vClearcoatRoughnessMapUv;
#endif
#ifdef USE_SHEEN_COLORMAP
	uniform mat3 sheenColorMapTransform;
	varying vec2 vSheenColorMapUv;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	uniform mat3 sheenRoughnessMapTransform;
	varying vec2 vSheenRoughnessMapUv;
#endif
#ifdef USE_IRIDESCENCEMAP
	uniform mat3 iridescenceMapTransform;
	varying vec2 vIridescenceMapUv;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	uniform mat3 iridescenceThicknessMapTransform;
	varying vec2 vIridescenceThicknessMapUv;
#endif
#ifdef USE_SPECULARMAP
	uniform mat3 specularMapTransform;
	varying vec2 vSpecularMapUv;
#endif
#ifdef USE_SPECULAR_COLORMAP
	uniform mat3 specularColorMapTransform;
	varying vec2 vSpecularColorMapUv;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	uniform mat3 specularIntensityMapTransform;
	varying vec2 vSpecularIntensityMapUv;
#endif
#ifdef USE_TRANSMISSIONMAP
	uniform mat3 transmissionMapTransform;
	varying vec2 vTransmissionMapUv;
#endif
#ifdef USE_THICKNESSMAP
	uniform mat3 thicknessMapTransform;
	varying vec2 vThicknessMapUv;
#endif`,Jv=`#if defined( USE_UV ) || defined( USE_ANISOTROPY )
	vUv = vec3( uv, 1 ).xy;
#endif
#ifdef USE_MAP
	vMapUv = ( mapTransform * vec3( MAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ALPHAMAP
	vAlphaMapUv = ( alphaMapTransform * vec3( ALPHAMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_LIGHTMAP
	vLightMapUv = ( lightMapTransform * vec3( LIGHTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_AOMAP
	vAoMapUv = ( aoMapTransform * vec3( AOMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_BUMPMAP
	vBumpMapUv = ( bumpMapTransform * vec3( BUMPMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_NORMALMAP
	vNormalMapUv = ( normalMapTransform * vec3( NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DISPLACEMENTMAP
	vDisplacementMapUv = ( displacementMapTransform * vec3( DISPLACEMENTMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_EMISSIVEMAP
	vEmissiveMapUv = ( emissiveMapTransform * vec3( EMISSIVEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_METALNESSMAP
	vMetalnessMapUv = ( metalnessMapTransform * vec3( METALNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ROUGHNESSMAP
	vRoughnessMapUv = ( roughnessMapTransform * vec3( ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_DIFFUSE_ROUGHNESSMAP
	vDiffuseRoughnessMapUv = ( diffuseRoughnessMapTransform * vec3( DIFFUSE_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_ANISOTROPYMAP
	vAnisotropyMapUv = ( anisotropyMapTransform * vec3( ANISOTROPYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOATMAP
	vClearcoatMapUv = ( clearcoatMapTransform * vec3( CLEARCOATMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_NORMALMAP
	vClearcoatNormalMapUv = ( clearcoatNormalMapTransform * vec3( CLEARCOAT_NORMALMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_CLEARCOAT_ROUGHNESSMAP
	vClearcoatRoughnessMapUv = ( clearcoatRoughnessMapTransform * vec3( CLEARCOAT_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCEMAP
	vIridescenceMapUv = ( iridescenceMapTransform * vec3( IRIDESCENCEMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_IRIDESCENCE_THICKNESSMAP
	vIridescenceThicknessMapUv = ( iridescenceThicknessMapTransform * vec3( IRIDESCENCE_THICKNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_COLORMAP
	vSheenColorMapUv = ( sheenColorMapTransform * vec3( SHEEN_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SHEEN_ROUGHNESSMAP
	vSheenRoughnessMapUv = ( sheenRoughnessMapTransform * vec3( SHEEN_ROUGHNESSMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULARMAP
	vSpecularMapUv = ( specularMapTransform * vec3( SPECULARMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_COLORMAP
	vSpecularColorMapUv = ( specularColorMapTransform * vec3( SPECULAR_COLORMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_SPECULAR_INTENSITYMAP
	vSpecularIntensityMapUv = ( specularIntensityMapTransform * vec3( SPECULAR_INTENSITYMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_TRANSMISSIONMAP
	vTransmissionMapUv = ( transmissionMapTransform * vec3( TRANSMISSIONMAP_UV, 1 ) ).xy;
#endif
#ifdef USE_THICKNESSMAP
	vThicknessMapUv = ( thicknessMapTransform * vec3( THICKNESSMAP_UV, 1 ) ).xy;
#endif`,Kv=`#if defined( USE_ENVMAP ) || defined( DISTANCE ) || defined ( USE_SHADOWMAP ) || defined ( USE_TRANSMISSION ) || NUM_SPOT_LIGHT_COORDS > 0
	vec4 worldPosition = vec4( transformed, 1.0 );
	#ifdef USE_BATCHING
		worldPosition = batchingMatrix * worldPosition;
	#endif
	#ifdef USE_INSTANCING
		worldPosition = instanceMatrix * worldPosition;
	#endif
	worldPosition = modelMatrix * worldPosition;
#endif`,jv=`varying vec2 vUv;
uniform mat3 uvTransform;
void main() {
	vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	gl_Position = vec4( position.xy, 1.0, 1.0 );
}`,Qv=`uniform sampler2D t2D;
uniform float backgroundIntensity;
varying vec2 vUv;
void main() {
	vec4 texColor = texture2D( t2D, vUv );
	#ifdef DECODE_VIDEO_TEXTURE
		texColor = vec4( mix( pow( texColor.rgb * 0.9478672986 + vec3( 0.0521327014 ), vec3( 2.4 ) ), texColor.rgb * 0.0773993808, vec3( lessThanEqual( texColor.rgb, vec3( 0.04045 ) ) ) ), texColor.w );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,tM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,eM=`uniform float backgroundBlurriness;
uniform float backgroundIntensity;
uniform mat3 backgroundRotation;
varying vec3 vWorldDirection;
#include <envmap_common_pars_fragment>
void main() {
	#ifdef ENVMAP_TYPE_PMREM
		vec4 texColor = textureLod( envMap, backgroundRotation * vWorldDirection, roughnessToMip( backgroundBlurriness ) );
	#else
		vec4 texColor = textureCube( envMap, backgroundRotation * vWorldDirection );
	#endif
	texColor.rgb *= backgroundIntensity;
	gl_FragColor = texColor;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,nM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
	gl_Position.z = gl_Position.w;
}`,iM=`uniform samplerCube tCube;
uniform float tFlip;
uniform float opacity;
varying vec3 vWorldDirection;
void main() {
	vec4 texColor = textureCube( tCube, vec3( tFlip * vWorldDirection.x, vWorldDirection.yz ) );
	gl_FragColor = texColor;
	gl_FragColor.a *= opacity;
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,sM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
varying vec2 vHighPrecisionZW;
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vHighPrecisionZW = gl_Position.zw;
}`,rM=`#if DEPTH_PACKING == 3200
	uniform float opacity;
#endif
#include <common>
#include <packing>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
varying vec2 vHighPrecisionZW;
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#if DEPTH_PACKING == 3200
		diffuseColor.a = opacity;
	#endif
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <logdepthbuf_fragment>
	#ifdef USE_REVERSED_DEPTH_BUFFER
		float fragCoordZ = vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ];
	#else
		float fragCoordZ = 0.5 * vHighPrecisionZW[ 0 ] / vHighPrecisionZW[ 1 ] + 0.5;
	#endif
	#if DEPTH_PACKING == 3200
		gl_FragColor = vec4( vec3( 1.0 - fragCoordZ ), opacity );
	#elif DEPTH_PACKING == 3201
		gl_FragColor = packDepthToRGBA( fragCoordZ );
	#elif DEPTH_PACKING == 3202
		gl_FragColor = vec4( packDepthToRGB( fragCoordZ ), 1.0 );
	#elif DEPTH_PACKING == 3203
		gl_FragColor = vec4( packDepthToRG( fragCoordZ ), 0.0, 1.0 );
	#endif
}`,oM=`#define DISTANCE
varying vec3 vWorldPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <skinbase_vertex>
	#include <morphinstance_vertex>
	#ifdef USE_DISPLACEMENTMAP
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <worldpos_vertex>
	#include <clipping_planes_vertex>
	vWorldPosition = worldPosition.xyz;
}`,aM=`#define DISTANCE
uniform vec3 referencePosition;
uniform float nearDistance;
uniform float farDistance;
varying vec3 vWorldPosition;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 1.0 );
	#include <clipping_planes_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	float dist = length( vWorldPosition - referencePosition );
	dist = ( dist - nearDistance ) / ( farDistance - nearDistance );
	dist = saturate( dist );
	gl_FragColor = vec4( dist, 0.0, 0.0, 1.0 );
}`,lM=`varying vec3 vWorldDirection;
#include <common>
void main() {
	vWorldDirection = transformDirection( position, modelMatrix );
	#include <begin_vertex>
	#include <project_vertex>
}`,cM=`uniform sampler2D tEquirect;
varying vec3 vWorldDirection;
#include <common>
void main() {
	vec3 direction = normalize( vWorldDirection );
	vec2 sampleUV = equirectUv( direction );
	gl_FragColor = texture2D( tEquirect, sampleUV );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
}`,hM=`uniform float scale;
attribute float lineDistance;
varying float vLineDistance;
#include <common>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	vLineDistance = scale * lineDistance;
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,uM=`uniform vec3 diffuse;
uniform float opacity;
uniform float dashSize;
uniform float totalSize;
varying float vLineDistance;
#include <common>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	if ( mod( vLineDistance, totalSize ) > dashSize ) {
		discard;
	}
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,dM=`#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#if defined ( USE_ENVMAP ) || defined ( USE_SKINNING )
		#include <beginnormal_vertex>
		#include <morphnormal_vertex>
		#include <skinbase_vertex>
		#include <skinnormal_vertex>
		#include <defaultnormal_vertex>
	#endif
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <fog_vertex>
}`,fM=`uniform vec3 diffuse;
uniform float opacity;
#ifndef FLAT_SHADED
	varying vec3 vNormal;
#endif
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <fog_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	#ifdef USE_LIGHTMAP
		vec4 lightMapTexel = texture2D( lightMap, vLightMapUv );
		reflectedLight.indirectDiffuse += lightMapTexel.rgb * lightMapIntensity * RECIPROCAL_PI;
	#else
		reflectedLight.indirectDiffuse += vec3( 1.0 );
	#endif
	#include <aomap_fragment>
	reflectedLight.indirectDiffuse *= diffuseColor.rgb;
	vec3 outgoingLight = reflectedLight.indirectDiffuse;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,pM=`#define LAMBERT
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,mM=`#define LAMBERT
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_lambert_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_lambert_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,gM=`#define MATCAP
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <color_pars_vertex>
#include <displacementmap_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
	vViewPosition = - mvPosition.xyz;
}`,_M=`#define MATCAP
uniform vec3 diffuse;
uniform float opacity;
uniform sampler2D matcap;
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	vec3 viewDir = normalize( vViewPosition );
	vec3 x = normalize( vec3( viewDir.z, 0.0, - viewDir.x ) );
	vec3 y = cross( viewDir, x );
	vec2 uv = vec2( dot( x, normal ), dot( y, normal ) ) * 0.495 + 0.5;
	#ifdef USE_MATCAP
		vec4 matcapColor = texture2D( matcap, uv );
	#else
		vec4 matcapColor = vec4( vec3( mix( 0.2, 0.8, uv.y ) ), 1.0 );
	#endif
	vec3 outgoingLight = diffuseColor.rgb * matcapColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,xM=`#define NORMAL
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	vViewPosition = - mvPosition.xyz;
#endif
}`,yM=`#define NORMAL
uniform float opacity;
#if defined( FLAT_SHADED ) || defined( USE_BUMPMAP ) || defined( USE_NORMALMAP_TANGENTSPACE )
	varying vec3 vViewPosition;
#endif
#include <uv_pars_fragment>
#include <normal_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( 0.0, 0.0, 0.0, opacity );
	#include <clipping_planes_fragment>
	#include <logdepthbuf_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	gl_FragColor = vec4( normalize( normal ) * 0.5 + 0.5, diffuseColor.a );
	#ifdef OPAQUE
		gl_FragColor.a = 1.0;
	#endif
}`,vM=`#define PHONG
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <envmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <envmap_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,MM=`#define PHONG
uniform vec3 diffuse;
uniform vec3 emissive;
uniform vec3 specular;
uniform float shininess;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_phong_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <specularmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <specularmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_phong_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + reflectedLight.directSpecular + reflectedLight.indirectSpecular + totalEmissiveRadiance;
	#include <envmap_fragment>
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,SM=`#define STANDARD
varying vec3 vViewPosition;
#ifdef USE_TRANSMISSION
	varying vec3 vWorldPosition;
#endif
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
#ifdef USE_TRANSMISSION
	vWorldPosition = worldPosition.xyz;
#endif
}`,bM=`#define STANDARD
#ifdef PHYSICAL
	#define IOR
	#define USE_SPECULAR
#endif
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float roughness;
uniform float metalness;
uniform float opacity;
#ifdef IOR
	uniform float ior;
#endif
#ifdef USE_SPECULAR
	uniform float specularIntensity;
	uniform vec3 specularColor;
	#ifdef USE_SPECULAR_COLORMAP
		uniform sampler2D specularColorMap;
	#endif
	#ifdef USE_SPECULAR_INTENSITYMAP
		uniform sampler2D specularIntensityMap;
	#endif
#endif
#ifdef USE_CLEARCOAT
	uniform float clearcoat;
	uniform float clearcoatRoughness;
#endif
#ifdef USE_DIFFUSE_ROUGHNESS
	uniform float diffuseRoughness;
	#ifdef USE_DIFFUSE_ROUGHNESSMAP
		uniform sampler2D diffuseRoughnessMap;
	#endif
#endif
#ifdef USE_DISPERSION
	uniform float dispersion;
#endif
#ifdef USE_RETROREFLECTION
	uniform float retroreflectivity;
#endif
#ifdef USE_IRIDESCENCE
	uniform float iridescence;
	uniform float iridescenceIOR;
	uniform float iridescenceThicknessMinimum;
	uniform float iridescenceThicknessMaximum;
#endif
#ifdef USE_SHEEN
	uniform vec3 sheenColor;
	uniform float sheenRoughness;
	#ifdef USE_SHEEN_COLORMAP
		uniform sampler2D sheenColorMap;
	#endif
	#ifdef USE_SHEEN_ROUGHNESSMAP
		uniform sampler2D sheenRoughnessMap;
	#endif
#endif
#ifdef USE_ANISOTROPY
	uniform vec2 anisotropyVector;
	#ifdef USE_ANISOTROPYMAP
		uniform sampler2D anisotropyMap;
	#endif
#endif
varying vec3 vViewPosition;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <iridescence_fragment>
#include <envmap_common_pars_fragment>
#include <envmap_physical_pars_fragment>
#include <fog_pars_fragment>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_physical_pars_fragment>
#include <transmission_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <clearcoat_pars_fragment>
#include <iridescence_pars_fragment>
#include <roughnessmap_pars_fragment>
#include <metalnessmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <roughnessmap_fragment>
	#include <metalnessmap_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <clearcoat_normal_fragment_begin>
	#include <clearcoat_normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_physical_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 totalDiffuse = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse;
	vec3 totalSpecular = reflectedLight.directSpecular + reflectedLight.indirectSpecular;
	#include <transmission_fragment>
	vec3 outgoingLight = totalDiffuse + totalSpecular + totalEmissiveRadiance;
	#ifdef USE_SHEEN
 
		outgoingLight = outgoingLight + sheenSpecularDirect + sheenSpecularIndirect;
 
 	#endif
	#ifdef USE_CLEARCOAT
		float dotNVcc = saturate( dot( geometryClearcoatNormal, geometryViewDir ) );
		vec3 Fcc = F_Schlick( material.clearcoatF0, material.clearcoatF90, dotNVcc );
		outgoingLight = outgoingLight * ( 1.0 - material.clearcoat * Fcc ) + ( clearcoatSpecularDirect + clearcoatSpecularIndirect ) * material.clearcoat;
	#endif
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,wM=`#define TOON
varying vec3 vViewPosition;
#include <common>
#include <batching_pars_vertex>
#include <uv_pars_vertex>
#include <displacementmap_pars_vertex>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <normal_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <shadowmap_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <normal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <displacementmap_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	vViewPosition = - mvPosition.xyz;
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,EM=`#define TOON
uniform vec3 diffuse;
uniform vec3 emissive;
uniform float opacity;
#include <common>
#include <dithering_pars_fragment>
#include <color_pars_fragment>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <aomap_pars_fragment>
#include <lightmap_pars_fragment>
#include <emissivemap_pars_fragment>
#include <gradientmap_pars_fragment>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <normal_pars_fragment>
#include <lights_toon_pars_fragment>
#include <shadowmap_pars_fragment>
#include <bumpmap_pars_fragment>
#include <normalmap_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	ReflectedLight reflectedLight = ReflectedLight( vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ), vec3( 0.0 ) );
	vec3 totalEmissiveRadiance = emissive;
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <color_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	#include <normal_fragment_begin>
	#include <normal_fragment_maps>
	#include <emissivemap_fragment>
	#include <lights_toon_fragment>
	#include <lights_fragment_begin>
	#include <lights_fragment_maps>
	#include <lights_fragment_end>
	#include <aomap_fragment>
	vec3 outgoingLight = reflectedLight.directDiffuse + reflectedLight.indirectDiffuse + totalEmissiveRadiance;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
	#include <dithering_fragment>
}`,TM=`uniform float size;
uniform float scale;
#include <common>
#include <color_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
#ifdef USE_POINTS_UV
	varying vec2 vUv;
	uniform mat3 uvTransform;
#endif
void main() {
	#ifdef USE_POINTS_UV
		vUv = ( uvTransform * vec3( uv, 1 ) ).xy;
	#endif
	#include <color_vertex>
	#include <morphinstance_vertex>
	#include <morphcolor_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <project_vertex>
	gl_PointSize = size;
	#ifdef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) gl_PointSize *= ( scale / - mvPosition.z );
	#endif
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <worldpos_vertex>
	#include <fog_vertex>
}`,AM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <color_pars_fragment>
#include <map_particle_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_particle_fragment>
	#include <color_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,RM=`#include <common>
#include <batching_pars_vertex>
#include <fog_pars_vertex>
#include <morphtarget_pars_vertex>
#include <skinning_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <shadowmap_pars_vertex>
void main() {
	#include <batching_vertex>
	#include <beginnormal_vertex>
	#include <morphinstance_vertex>
	#include <morphnormal_vertex>
	#include <skinbase_vertex>
	#include <skinnormal_vertex>
	#include <defaultnormal_vertex>
	#include <begin_vertex>
	#include <morphtarget_vertex>
	#include <skinning_vertex>
	#include <project_vertex>
	#include <logdepthbuf_vertex>
	#include <worldpos_vertex>
	#include <shadowmap_vertex>
	#include <fog_vertex>
}`,CM=`uniform vec3 color;
uniform float opacity;
#include <common>
#include <fog_pars_fragment>
#include <bsdfs>
#include <lights_pars_begin>
#include <logdepthbuf_pars_fragment>
#include <shadowmap_pars_fragment>
#include <shadowmask_pars_fragment>
void main() {
	#include <logdepthbuf_fragment>
	gl_FragColor = vec4( color, opacity * ( 1.0 - getShadowMask() ) );
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
	#include <premultiplied_alpha_fragment>
}`,PM=`uniform float rotation;
uniform vec2 center;
#include <common>
#include <uv_pars_vertex>
#include <fog_pars_vertex>
#include <logdepthbuf_pars_vertex>
#include <clipping_planes_pars_vertex>
void main() {
	#include <uv_vertex>
	vec4 mvPosition = modelViewMatrix[ 3 ];
	vec2 scale = vec2( length( modelMatrix[ 0 ].xyz ), length( modelMatrix[ 1 ].xyz ) );
	#ifndef USE_SIZEATTENUATION
		bool isPerspective = isPerspectiveMatrix( projectionMatrix );
		if ( isPerspective ) scale *= - mvPosition.z;
	#endif
	vec2 alignedPosition = ( position.xy - ( center - vec2( 0.5 ) ) ) * scale;
	vec2 rotatedPosition;
	rotatedPosition.x = cos( rotation ) * alignedPosition.x - sin( rotation ) * alignedPosition.y;
	rotatedPosition.y = sin( rotation ) * alignedPosition.x + cos( rotation ) * alignedPosition.y;
	mvPosition.xy += rotatedPosition;
	gl_Position = projectionMatrix * mvPosition;
	#include <logdepthbuf_vertex>
	#include <clipping_planes_vertex>
	#include <fog_vertex>
}`,IM=`uniform vec3 diffuse;
uniform float opacity;
#include <common>
#include <uv_pars_fragment>
#include <map_pars_fragment>
#include <alphamap_pars_fragment>
#include <alphatest_pars_fragment>
#include <alphahash_pars_fragment>
#include <fog_pars_fragment>
#include <logdepthbuf_pars_fragment>
#include <clipping_planes_pars_fragment>
void main() {
	vec4 diffuseColor = vec4( diffuse, opacity );
	#include <clipping_planes_fragment>
	vec3 outgoingLight = vec3( 0.0 );
	#include <logdepthbuf_fragment>
	#include <map_fragment>
	#include <alphamap_fragment>
	#include <alphatest_fragment>
	#include <alphahash_fragment>
	outgoingLight = diffuseColor.rgb;
	#include <opaque_fragment>
	#include <tonemapping_fragment>
	#include <colorspace_fragment>
	#include <fog_fragment>
}`,de={alphahash_fragment:Qx,alphahash_pars_fragment:ty,alphamap_fragment:ey,alphamap_pars_fragment:ny,alphatest_fragment:iy,alphatest_pars_fragment:sy,aomap_fragment:ry,aomap_pars_fragment:oy,batching_pars_vertex:ay,batching_vertex:ly,begin_vertex:cy,beginnormal_vertex:hy,bsdfs:uy,iridescence_fragment:dy,bumpmap_pars_fragment:fy,clipping_planes_fragment:py,clipping_planes_pars_fragment:my,clipping_planes_pars_vertex:gy,clipping_planes_vertex:_y,color_fragment:xy,color_pars_fragment:yy,color_pars_vertex:vy,color_vertex:My,common:Sy,defaultnormal_vertex:by,displacementmap_pars_vertex:wy,displacementmap_vertex:Ey,emissivemap_fragment:Ty,emissivemap_pars_fragment:Ay,colorspace_fragment:Ry,colorspace_pars_fragment:Cy,envmap_fragment:Py,envmap_common_pars_fragment:Iy,envmap_pars_fragment:Ly,envmap_pars_vertex:Dy,envmap_physical_pars_fragment:Wy,envmap_vertex:Ny,fog_vertex:Uy,fog_pars_vertex:Fy,fog_fragment:Oy,fog_pars_fragment:By,gradientmap_pars_fragment:ky,lightmap_pars_fragment:zy,lights_lambert_fragment:Vy,lights_lambert_pars_fragment:Gy,lights_pars_begin:Hy,lights_toon_fragment:Xy,lights_toon_pars_fragment:qy,lights_phong_fragment:Yy,lights_phong_pars_fragment:$y,lights_physical_fragment:Zy,lights_physical_pars_fragment:Jy,lights_fragment_begin:Ky,lights_fragment_maps:jy,lights_fragment_end:Qy,lightprobes_pars_fragment:tv,logdepthbuf_fragment:ev,logdepthbuf_pars_fragment:nv,logdepthbuf_pars_vertex:iv,logdepthbuf_vertex:sv,map_fragment:rv,map_pars_fragment:ov,map_particle_fragment:av,map_particle_pars_fragment:lv,metalnessmap_fragment:cv,metalnessmap_pars_fragment:hv,morphinstance_vertex:uv,morphcolor_vertex:dv,morphnormal_vertex:fv,morphtarget_pars_vertex:pv,morphtarget_vertex:mv,normal_fragment_begin:gv,normal_fragment_maps:_v,normal_pars_fragment:xv,normal_pars_vertex:yv,normal_vertex:vv,normalmap_pars_fragment:Mv,clearcoat_normal_fragment_begin:Sv,clearcoat_normal_fragment_maps:bv,clearcoat_pars_fragment:wv,iridescence_pars_fragment:Ev,opaque_fragment:Tv,packing:Av,premultiplied_alpha_fragment:Rv,project_vertex:Cv,dithering_fragment:Pv,dithering_pars_fragment:Iv,roughnessmap_fragment:Lv,roughnessmap_pars_fragment:Dv,shadowmap_pars_fragment:Nv,shadowmap_pars_vertex:Uv,shadowmap_vertex:Fv,shadowmask_pars_fragment:Ov,skinbase_vertex:Bv,skinning_pars_vertex:kv,skinning_vertex:zv,skinnormal_vertex:Vv,specularmap_fragment:Gv,specularmap_pars_fragment:Hv,tonemapping_fragment:Wv,tonemapping_pars_fragment:Xv,transmission_fragment:qv,transmission_pars_fragment:Yv,uv_pars_fragment:$v,uv_pars_vertex:Zv,uv_vertex:Jv,worldpos_vertex:Kv,background_vert:jv,background_frag:Qv,backgroundCube_vert:tM,backgroundCube_frag:eM,cube_vert:nM,cube_frag:iM,depth_vert:sM,depth_frag:rM,distance_vert:oM,distance_frag:aM,equirect_vert:lM,equirect_frag:cM,linedashed_vert:hM,linedashed_frag:uM,meshbasic_vert:dM,meshbasic_frag:fM,meshlambert_vert:pM,meshlambert_frag:mM,meshmatcap_vert:gM,meshmatcap_frag:_M,meshnormal_vert:xM,meshnormal_frag:yM,meshphong_vert:vM,meshphong_frag:MM,meshphysical_vert:SM,meshphysical_frag:bM,meshtoon_vert:wM,meshtoon_frag:EM,points_vert:TM,points_frag:AM,shadow_vert:RM,shadow_frag:CM,sprite_vert:PM,sprite_frag:IM},Lt={common:{diffuse:{value:new ae(16777215)},opacity:{value:1},map:{value:null},mapTransform:{value:new se},alphaMap:{value:null},alphaMapTransform:{value:new se},alphaTest:{value:0}},specularmap:{specularMap:{value:null},specularMapTransform:{value:new se}},envmap:{envMap:{value:null},envMapRotation:{value:new se},reflectivity:{value:1},ior:{value:1.5},refractionRatio:{value:.98},dfgLUT:{value:null}},aomap:{aoMap:{value:null},aoMapIntensity:{value:1},aoMapTransform:{value:new se}},lightmap:{lightMap:{value:null},lightMapIntensity:{value:1},lightMapTransform:{value:new se}},bumpmap:{bumpMap:{value:null},bumpMapTransform:{value:new se},bumpScale:{value:1}},normalmap:{normalMap:{value:null},normalMapTransform:{value:new se},normalScale:{value:new ie(1,1)}},displacementmap:{displacementMap:{value:null},displacementMapTransform:{value:new se},displacementScale:{value:1},displacementBias:{value:0}},emissivemap:{emissiveMap:{value:null},emissiveMapTransform:{value:new se}},metalnessmap:{metalnessMap:{value:null},metalnessMapTransform:{value:new se}},roughnessmap:{roughnessMap:{value:null},roughnessMapTransform:{value:new se}},gradientmap:{gradientMap:{value:null}},fog:{fogDensity:{value:25e-5},fogNear:{value:1},fogFar:{value:2e3},fogColor:{value:new ae(16777215)}},lights:{ambientLightColor:{value:[]},lightProbe:{value:[]},sunLights:{value:[],properties:{direction:{},color:{}}},sunLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},sunShadowMatrix:{value:[]},sunShadowCascade:{value:[]},directionalLights:{value:[],properties:{direction:{},color:{}}},directionalLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},directionalShadowMatrix:{value:[]},spotLights:{value:[],properties:{color:{},position:{},direction:{},distance:{},coneCos:{},penumbraCos:{},decay:{}}},spotLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{}}},spotLightMap:{value:[]},spotLightMatrix:{value:[]},pointLights:{value:[],properties:{color:{},position:{},decay:{},distance:{}}},pointLightShadows:{value:[],properties:{shadowIntensity:1,shadowBias:{},shadowNormalBias:{},shadowRadius:{},shadowMapSize:{},shadowCameraNear:{},shadowCameraFar:{}}},pointShadowMatrix:{value:[]},hemisphereLights:{value:[],properties:{direction:{},skyColor:{},groundColor:{}}},rectAreaLights:{value:[],properties:{color:{},position:{},width:{},height:{}}},ltc_1:{value:null},ltc_2:{value:null},probesSH:{value:[]},probesMin:{value:[]},probesMax:{value:[]},probesResolution:{value:[]}},points:{diffuse:{value:new ae(16777215)},opacity:{value:1},size:{value:1},scale:{value:1},map:{value:null},alphaMap:{value:null},alphaMapTransform:{value:new se},alphaTest:{value:0},uvTransform:{value:new se}},sprite:{diffuse:{value:new ae(16777215)},opacity:{value:1},center:{value:new ie(.5,.5)},rotation:{value:0},map:{value:null},mapTransform:{value:new se},alphaMap:{value:null},alphaMapTransform:{value:new se},alphaTest:{value:0}}},Yi={basic:{uniforms:Bn([Lt.common,Lt.specularmap,Lt.envmap,Lt.aomap,Lt.lightmap,Lt.fog]),vertexShader:de.meshbasic_vert,fragmentShader:de.meshbasic_frag},lambert:{uniforms:Bn([Lt.common,Lt.specularmap,Lt.envmap,Lt.aomap,Lt.lightmap,Lt.emissivemap,Lt.bumpmap,Lt.normalmap,Lt.displacementmap,Lt.fog,Lt.lights,{emissive:{value:new ae(0)},envMapIntensity:{value:1}}]),vertexShader:de.meshlambert_vert,fragmentShader:de.meshlambert_frag},phong:{uniforms:Bn([Lt.common,Lt.specularmap,Lt.envmap,Lt.aomap,Lt.lightmap,Lt.emissivemap,Lt.bumpmap,Lt.normalmap,Lt.displacementmap,Lt.fog,Lt.lights,{emissive:{value:new ae(0)},specular:{value:new ae(1118481)},shininess:{value:30},envMapIntensity:{value:1}}]),vertexShader:de.meshphong_vert,fragmentShader:de.meshphong_frag},standard:{uniforms:Bn([Lt.common,Lt.envmap,Lt.aomap,Lt.lightmap,Lt.emissivemap,Lt.bumpmap,Lt.normalmap,Lt.displacementmap,Lt.roughnessmap,Lt.metalnessmap,Lt.fog,Lt.lights,{emissive:{value:new ae(0)},roughness:{value:1},metalness:{value:0},envMapIntensity:{value:1}}]),vertexShader:de.meshphysical_vert,fragmentShader:de.meshphysical_frag},toon:{uniforms:Bn([Lt.common,Lt.aomap,Lt.lightmap,Lt.emissivemap,Lt.bumpmap,Lt.normalmap,Lt.displacementmap,Lt.gradientmap,Lt.fog,Lt.lights,{emissive:{value:new ae(0)}}]),vertexShader:de.meshtoon_vert,fragmentShader:de.meshtoon_frag},matcap:{uniforms:Bn([Lt.common,Lt.bumpmap,Lt.normalmap,Lt.displacementmap,Lt.fog,{matcap:{value:null}}]),vertexShader:de.meshmatcap_vert,fragmentShader:de.meshmatcap_frag},points:{uniforms:Bn([Lt.points,Lt.fog]),vertexShader:de.points_vert,fragmentShader:de.points_frag},dashed:{uniforms:Bn([Lt.common,Lt.fog,{scale:{value:1},dashSize:{value:1},totalSize:{value:2}}]),vertexShader:de.linedashed_vert,fragmentShader:de.linedashed_frag},depth:{uniforms:Bn([Lt.common,Lt.displacementmap]),vertexShader:de.depth_vert,fragmentShader:de.depth_frag},normal:{uniforms:Bn([Lt.common,Lt.bumpmap,Lt.normalmap,Lt.displacementmap,{opacity:{value:1}}]),vertexShader:de.meshnormal_vert,fragmentShader:de.meshnormal_frag},sprite:{uniforms:Bn([Lt.sprite,Lt.fog]),vertexShader:de.sprite_vert,fragmentShader:de.sprite_frag},background:{uniforms:{uvTransform:{value:new se},t2D:{value:null},backgroundIntensity:{value:1}},vertexShader:de.background_vert,fragmentShader:de.background_frag},backgroundCube:{uniforms:{envMap:{value:null},backgroundBlurriness:{value:0},backgroundIntensity:{value:1},backgroundRotation:{value:new se}},vertexShader:de.backgroundCube_vert,fragmentShader:de.backgroundCube_frag},cube:{uniforms:{tCube:{value:null},tFlip:{value:-1},opacity:{value:1}},vertexShader:de.cube_vert,fragmentShader:de.cube_frag},equirect:{uniforms:{tEquirect:{value:null}},vertexShader:de.equirect_vert,fragmentShader:de.equirect_frag},distance:{uniforms:Bn([Lt.common,Lt.displacementmap,{referencePosition:{value:new W},nearDistance:{value:1},farDistance:{value:1e3}}]),vertexShader:de.distance_vert,fragmentShader:de.distance_frag},shadow:{uniforms:Bn([Lt.lights,Lt.fog,{color:{value:new ae(0)},opacity:{value:1}}]),vertexShader:de.shadow_vert,fragmentShader:de.shadow_frag}};Yi.physical={uniforms:Bn([Yi.standard.uniforms,{clearcoat:{value:0},clearcoatMap:{value:null},clearcoatMapTransform:{value:new se},clearcoatNormalMap:{value:null},clearcoatNormalMapTransform:{value:new se},clearcoatNormalScale:{value:new ie(1,1)},clearcoatRoughness:{value:0},clearcoatRoughnessMap:{value:null},clearcoatRoughnessMapTransform:{value:new se},diffuseRoughness:{value:0},diffuseRoughnessMap:{value:null},diffuseRoughnessMapTransform:{value:new se},dispersion:{value:0},retroreflectivity:{value:0},iridescence:{value:0},iridescenceMap:{value:null},iridescenceMapTransform:{value:new se},iridescenceIOR:{value:1.3},iridescenceThicknessMinimum:{value:100},iridescenceThicknessMaximum:{value:400},iridescenceThicknessMap:{value:null},iridescenceThicknessMapTransform:{value:new se},sheen:{value:0},sheenColor:{value:new ae(0)},sheenColorMap:{value:null},sheenColorMapTransform:{value:new se},sheenRoughness:{value:1},sheenRoughnessMap:{value:null},sheenRoughnessMapTransform:{value:new se},transmission:{value:0},transmissionMap:{value:null},transmissionMapTransform:{value:new se},transmissionSamplerSize:{value:new ie},transmissionSamplerMap:{value:null},thickness:{value:0},thicknessMap:{value:null},thicknessMapTransform:{value:new se},attenuationDistance:{value:0},attenuationColor:{value:new ae(0)},specularColor:{value:new ae(1,1,1)},specularColorMap:{value:null},specularColorMapTransform:{value:new se},specularIntensity:{value:1},specularIntensityMap:{value:null},specularIntensityMapTransform:{value:new se},anisotropyVector:{value:new ie},anisotropyMap:{value:null},anisotropyMapTransform:{value:new se}}]),vertexShader:de.meshphysical_vert,fragmentShader:de.meshphysical_frag};var Fc={r:0,b:0,g:0},LM=new Xe,cg=new se;cg.set(-1,0,0,0,1,0,0,0,1);function DM(i,t,e,n,s,r){let o=new ae(0),a=s===!0?0:1,c,l,u=null,h=0,d=null;function f(y){let A=y.isScene===!0?y.background:null;if(A&&A.isTexture){let M=y.backgroundBlurriness>0;A=t.get(A,M)}return A}function g(y){let A=!1,M=f(y);M===null?p(o,a):M&&M.isColor&&(p(M,1),A=!0);let R=i.xr.getEnvironmentBlendMode();R==="additive"?e.buffers.color.setClear(0,0,0,1,r):R==="alpha-blend"&&e.buffers.color.setClear(0,0,0,0,r),(i.autoClear||A)&&(e.buffers.depth.setTest(!0),e.buffers.depth.setMask(!0),e.buffers.color.setMask(!0),i.clear(i.autoClearColor,i.autoClearDepth,i.autoClearStencil))}function v(y,A){let M=f(A);M&&M.isCubeTexture?(l===void 0&&(l=new Rn(new jr(1,1,1),new Wi({name:"BackgroundCubeMaterial",uniforms:ar(Yi.backgroundCube.uniforms),vertexShader:Yi.backgroundCube.vertexShader,fragmentShader:Yi.backgroundCube.fragmentShader,side:In,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),l.geometry.deleteAttribute("normal"),l.geometry.deleteAttribute("uv"),l.onBeforeRender=function(R,E,_){this.matrixWorld.copyPosition(_.matrixWorld)},Object.defineProperty(l.material,"envMap",{get:function(){return this.uniforms.envMap.value}}),n.update(l)),l.material.uniforms.envMap.value=M,l.material.uniforms.backgroundBlurriness.value=A.backgroundBlurriness,l.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,l.material.uniforms.backgroundRotation.value.setFromMatrix4(LM.makeRotationFromEuler(A.backgroundRotation)).transpose(),M.isRenderTargetTexture===!1&&l.material.uniforms.backgroundRotation.value.premultiply(cg),l.material.toneMapped=ye.getTransfer(M.colorSpace)!==Re,(u!==M||h!==M.version||d!==i.toneMapping)&&(l.material.needsUpdate=!0,u=M,h=M.version,d=i.toneMapping),l.layers.enableAll(),y.unshift(l,l.geometry,l.material,0,0,null)):M&&M.isTexture&&(c===void 0&&(c=new Rn(new nr(2,2),new Wi({name:"BackgroundMaterial",uniforms:ar(Yi.background.uniforms),vertexShader:Yi.background.vertexShader,fragmentShader:Yi.background.fragmentShader,side:Ri,depthTest:!1,depthWrite:!1,fog:!1,allowOverride:!1})),c.geometry.deleteAttribute("normal"),Object.defineProperty(c.material,"map",{get:function(){return this.uniforms.t2D.value}}),n.update(c)),c.material.uniforms.t2D.value=M,c.material.uniforms.backgroundIntensity.value=A.backgroundIntensity,c.material.toneMapped=ye.getTransfer(M.colorSpace)!==Re,M.matrixAutoUpdate===!0&&M.updateMatrix(),c.material.uniforms.uvTransform.value.copy(M.matrix),(u!==M||h!==M.version||d!==i.toneMapping)&&(c.material.needsUpdate=!0,u=M,h=M.version,d=i.toneMapping),c.layers.enableAll(),y.unshift(c,c.geometry,c.material,0,0,null))}function p(y,A){y.getRGB(Fc,Zu(i)),e.buffers.color.setClear(Fc.r,Fc.g,Fc.b,A,r)}function m(){l!==void 0&&(l.geometry.dispose(),l.material.dispose(),l=void 0),c!==void 0&&(c.geometry.dispose(),c.material.dispose(),c=void 0)}return{getClearColor:function(){return o},setClearColor:function(y,A=1){o.set(y),a=A,p(o,a)},getClearAlpha:function(){return a},setClearAlpha:function(y){a=y,p(o,a)},render:g,addToRenderList:v,dispose:m}}function NM(i,t){let e=i.getParameter(i.MAX_VERTEX_ATTRIBS),n={},s=d(null),r=s,o=!1;function a(I,V,G,D,H){let Y=!1,B=h(I,D,G,V);r!==B&&(r=B,l(r.object)),Y=f(I,D,G,H),Y&&g(I,D,G,H),H!==null&&t.update(H,i.ELEMENT_ARRAY_BUFFER),(Y||o)&&(o=!1,M(I,V,G,D),H!==null&&i.bindBuffer(i.ELEMENT_ARRAY_BUFFER,t.get(H).buffer))}function c(){return i.createVertexArray()}function l(I){return i.bindVertexArray(I)}function u(I){return i.deleteVertexArray(I)}function h(I,V,G,D){let H=D.wireframe===!0,Y=n[V.id];Y===void 0&&(Y={},n[V.id]=Y);let B=I.isInstancedMesh===!0?I.id:0,lt=Y[B];lt===void 0&&(lt={},Y[B]=lt);let Z=lt[G.id];Z===void 0&&(Z={},lt[G.id]=Z);let K=Z[H];return K===void 0&&(K=d(c()),Z[H]=K),K}function d(I){let V=[],G=[],D=[];for(let H=0;H<e;H++)V[H]=0,G[H]=0,D[H]=0;return{geometry:null,program:null,wireframe:!1,newAttributes:V,enabledAttributes:G,attributeDivisors:D,object:I,attributes:{},index:null}}function f(I,V,G,D){let H=r.attributes,Y=V.attributes,B=0,lt=G.getAttributes();for(let Z in lt)if(lt[Z].location>=0){let tt=H[Z],ut=Y[Z];if(ut===void 0&&(Z==="instanceMatrix"&&I.instanceMatrix&&(ut=I.instanceMatrix),Z==="instanceColor"&&I.instanceColor&&(ut=I.instanceColor)),tt===void 0||tt.attribute!==ut||ut&&tt.data!==ut.data)return!0;B++}return r.attributesNum!==B||r.index!==D}function g(I,V,G,D){let H={},Y=V.attributes,B=0,lt=G.getAttributes();for(let Z in lt)if(lt[Z].location>=0){let tt=Y[Z];tt===void 0&&(Z==="instanceMatrix"&&I.instanceMatrix&&(tt=I.instanceMatrix),Z==="instanceColor"&&I.instanceColor&&(tt=I.instanceColor));let ut={};ut.attribute=tt,tt&&tt.data&&(ut.data=tt.data),H[Z]=ut,B++}r.attributes=H,r.attributesNum=B,r.index=D}function v(){let I=r.newAttributes;for(let V=0,G=I.length;V<G;V++)I[V]=0}function p(I){m(I,0)}function m(I,V){let G=r.newAttributes,D=r.enabledAttributes,H=r.attributeDivisors;G[I]=1,D[I]===0&&(i.enableVertexAttribArray(I),D[I]=1),H[I]!==V&&(i.vertexAttribDivisor(I,V),H[I]=V)}function y(){let I=r.newAttributes,V=r.enabledAttributes;for(let G=0,D=V.length;G<D;G++)V[G]!==I[G]&&(i.disableVertexAttribArray(G),V[G]=0)}function A(I,V,G,D,H,Y,B){B===!0?i.vertexAttribIPointer(I,V,G,H,Y):i.vertexAttribPointer(I,V,G,D,H,Y)}function M(I,V,G,D){v();let H=D.attributes,Y=G.getAttributes(),B=V.defaultAttributeValues;for(let lt in Y){let Z=Y[lt];if(Z.location>=0){let K=H[lt];if(K===void 0&&(lt==="instanceMatrix"&&I.instanceMatrix&&(K=I.instanceMatrix),lt==="instanceColor"&&I.instanceColor&&(K=I.instanceColor)),K!==void 0){let tt=K.normalized,ut=K.itemSize,ct=t.get(K);if(ct===void 0)continue;let j=ct.buffer,gt=ct.type,it=ct.bytesPerElement,pt=gt===i.INT||gt===i.UNSIGNED_INT||K.gpuType===Ql;if(K.isInterleavedBufferAttribute){let mt=K.data,Ft=mt.isInterleavedBuffer===!0?mt.stride:mt.itemSize,Wt=K.offset;if(mt.isInstancedInterleavedBuffer||mt.isInstancedBufferAttribute){for(let Vt=0;Vt<Z.locationSize;Vt++)m(Z.location+Vt,mt.meshPerAttribute);I.isInstancedMesh!==!0&&D._maxInstanceCount===void 0&&(D._maxInstanceCount=mt.meshPerAttribute*mt.count)}else for(let Vt=0;Vt<Z.locationSize;Vt++)p(Z.location+Vt);i.bindBuffer(i.ARRAY_BUFFER,j);for(let Vt=0;Vt<Z.locationSize;Vt++)A(Z.location+Vt,ut/Z.locationSize,gt,tt,Ft*it,(Wt+ut/Z.locationSize*Vt)*it,pt)}else{if(K.isInstancedBufferAttribute){for(let mt=0;mt<Z.locationSize;mt++)m(Z.location+mt,K.meshPerAttribute);I.isInstancedMesh!==!0&&D._maxInstanceCount===void 0&&(D._maxInstanceCount=K.meshPerAttribute*K.count)}else for(let mt=0;mt<Z.locationSize;mt++)p(Z.location+mt);i.bindBuffer(i.ARRAY_BUFFER,j);for(let mt=0;mt<Z.locationSize;mt++)A(Z.location+mt,ut/Z.locationSize,gt,tt,ut*it,ut/Z.locationSize*mt*it,pt)}}else if(B!==void 0){let tt=B[lt];if(tt!==void 0)switch(tt.length){case 2:i.vertexAttrib2fv(Z.location,tt);break;case 3:i.vertexAttrib3fv(Z.location,tt);break;case 4:i.vertexAttrib4fv(Z.location,tt);break;default:i.vertexAttrib1fv(Z.location,tt)}}}}y()}function R(){O();for(let I in n){let V=n[I];for(let G in V){let D=V[G];for(let H in D){let Y=D[H];for(let B in Y)u(Y[B].object),delete Y[B];delete D[H]}}delete n[I]}}function E(I){if(n[I.id]===void 0)return;let V=n[I.id];for(let G in V){let D=V[G];for(let H in D){let Y=D[H];for(let B in Y)u(Y[B].object),delete Y[B];delete D[H]}}delete n[I.id]}function _(I){for(let V in n){let G=n[V];for(let D in G){let H=G[D];if(H[I.id]===void 0)continue;let Y=H[I.id];for(let B in Y)u(Y[B].object),delete Y[B];delete H[I.id]}}}function T(I){for(let V in n){let G=n[V],D=I.isInstancedMesh===!0?I.id:0,H=G[D];if(H!==void 0){for(let Y in H){let B=H[Y];for(let lt in B)u(B[lt].object),delete B[lt];delete H[Y]}delete G[D],Object.keys(G).length===0&&delete n[V]}}}function O(){N(),o=!0,r!==s&&(r=s,l(r.object))}function N(){s.geometry=null,s.program=null,s.wireframe=!1}return{setup:a,reset:O,resetDefaultState:N,dispose:R,releaseStatesOfGeometry:E,releaseStatesOfObject:T,releaseStatesOfProgram:_,initAttributes:v,enableAttribute:p,disableUnusedAttributes:y}}function UM(i,t,e){let n;function s(c){n=c}function r(c,l){i.drawArrays(n,c,l),e.update(l,n,1)}function o(c,l,u){u!==0&&(i.drawArraysInstanced(n,c,l,u),e.update(l,n,u))}function a(c,l,u){if(u===0)return;t.get("WEBGL_multi_draw").multiDrawArraysWEBGL(n,c,0,l,0,u);let d=0;for(let f=0;f<u;f++)d+=l[f];e.update(d,n,1)}this.setMode=s,this.render=r,this.renderInstances=o,this.renderMultiDraw=a}function FM(i,t,e,n){let s;function r(){if(s!==void 0)return s;if(t.has("EXT_texture_filter_anisotropic")===!0){let _=t.get("EXT_texture_filter_anisotropic");s=i.getParameter(_.MAX_TEXTURE_MAX_ANISOTROPY_EXT)}else s=0;return s}function o(_){return!(_!==Li&&n.convert(_)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_FORMAT))}function a(_){let T=_===Ii&&(t.has("EXT_color_buffer_half_float")||t.has("EXT_color_buffer_float"));return!(_!==Jn&&_!==Pi&&!T&&n.convert(_)!==i.getParameter(i.IMPLEMENTATION_COLOR_READ_TYPE))}function c(_){if(_==="highp"){if(i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.HIGH_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.HIGH_FLOAT).precision>0)return"highp";_="mediump"}return _==="mediump"&&i.getShaderPrecisionFormat(i.VERTEX_SHADER,i.MEDIUM_FLOAT).precision>0&&i.getShaderPrecisionFormat(i.FRAGMENT_SHADER,i.MEDIUM_FLOAT).precision>0?"mediump":"lowp"}let l=e.precision!==void 0?e.precision:"highp",u=c(l);u!==l&&(Zt("WebGLRenderer:",l,"not supported, using",u,"instead."),l=u);let h=e.reversedDepthBuffer===!0&&t.has("EXT_clip_control"),d=e.logarithmicDepthBuffer===!0&&h===!1;e.reversedDepthBuffer===!0&&h===!1&&Zt("WebGLRenderer: Unable to use reversed depth buffer due to missing EXT_clip_control extension. Fallback to default depth buffer."),e.logarithmicDepthBuffer===!0&&h===!0&&Zt("WebGLRenderer: Logarithmic depth buffer is ignored when reversed depth buffer is enabled.");let f=i.getParameter(i.MAX_TEXTURE_IMAGE_UNITS),g=i.getParameter(i.MAX_VERTEX_TEXTURE_IMAGE_UNITS),v=i.getParameter(i.MAX_TEXTURE_SIZE),p=i.getParameter(i.MAX_CUBE_MAP_TEXTURE_SIZE),m=i.getParameter(i.MAX_VERTEX_ATTRIBS),y=i.getParameter(i.MAX_VERTEX_UNIFORM_VECTORS),A=i.getParameter(i.MAX_VARYING_VECTORS),M=i.getParameter(i.MAX_FRAGMENT_UNIFORM_VECTORS),R=i.getParameter(i.MAX_SAMPLES),E=i.getParameter(i.SAMPLES);return{isWebGL2:!0,getMaxAnisotropy:r,getMaxPrecision:c,textureFormatReadable:o,textureTypeReadable:a,precision:l,logarithmicDepthBuffer:d,reversedDepthBuffer:h,maxTextures:f,maxVertexTextures:g,maxTextureSize:v,maxCubemapSize:p,maxAttributes:m,maxVertexUniforms:y,maxVaryings:A,maxFragmentUniforms:M,maxSamples:R,samples:E}}function OM(i){let t=this,e=null,n=0,s=!1,r=!1,o=new Xn,a=new se,c={value:null,needsUpdate:!1};this.uniform=c,this.numPlanes=0,this.numIntersection=0,this.init=function(h,d){let f=h.length!==0||d||n!==0||s;return s=d,n=h.length,f},this.beginShadows=function(){r=!0,u(null)},this.endShadows=function(){r=!1},this.setGlobalState=function(h,d){e=u(h,d,0)},this.setState=function(h,d,f){let g=h.clippingPlanes,v=h.clipIntersection,p=h.clipShadows,m=i.get(h);if(!s||g===null||g.length===0||r&&!p)r?u(null):l();else{let y=r?0:n,A=y*4,M=m.clippingState||null;c.value=M,M=u(g,d,A,f);for(let R=0;R!==A;++R)M[R]=e[R];m.clippingState=M,this.numIntersection=v?this.numPlanes:0,this.numPlanes+=y}};function l(){c.value!==e&&(c.value=e,c.needsUpdate=n>0),t.numPlanes=n,t.numIntersection=0}function u(h,d,f,g){let v=h!==null?h.length:0,p=null;if(v!==0){if(p=c.value,g!==!0||p===null){let m=f+v*4,y=d.matrixWorldInverse;a.getNormalMatrix(y),(p===null||p.length<m)&&(p=new Float32Array(m));for(let A=0,M=f;A!==v;++A,M+=4)o.copy(h[A]).applyMatrix4(y,a),o.normal.toArray(p,M),p[M+3]=o.constant}c.value=p,c.needsUpdate=!0}return t.numPlanes=v,t.numIntersection=0,p}}var pa=class extends ci{constructor(t=1,e={}){super(t,t,e),this.isWebGLCubeRenderTarget=!0;let n={width:t,height:t,depth:1},s=[n,n,n,n,n,n];this.texture=new qo(s),this._setTextureOptions(e),this.texture.isRenderTargetTexture=!0}fromEquirectangularTexture(t,e){this.texture.type=e.type,this.texture.colorSpace=e.colorSpace,this.texture.generateMipmaps=e.generateMipmaps,this.texture.minFilter=e.minFilter,this.texture.magFilter=e.magFilter;let n={uniforms:{tEquirect:{value:null}},vertexShader:`

				varying vec3 vWorldDirection;

				vec3 transformDirection( in vec3 dir, in mat4 matrix ) {

					return normalize( ( matrix * vec4( dir, 0.0 ) ).xyz );

				}

				void main() {

					vWorldDirection = transformDirection( position, modelMatrix );

					#include <begin_vertex>
					#include <project_vertex>

				}
			`,fragmentShader:`

				uniform sampler2D tEquirect;

				varying vec3 vWorldDirection;

				#include <common>

				void main() {

					vec3 direction = normalize( vWorldDirection );

					vec2 sampleUV = equirectUv( direction );

					gl_FragColor = texture2D( tEquirect, sampleUV );

				}
			`},s=new jr(5,5,5),r=new Wi({name:"CubemapFromEquirect",uniforms:ar(n.uniforms),vertexShader:n.vertexShader,fragmentShader:n.fragmentShader,side:In,blending:ir});r.uniforms.tEquirect.value=e;let o=new Rn(s,r),a=e.minFilter;return e.minFilter===ds&&(e.minFilter=Yn),new Qr(1,10,this).update(t,o),e.minFilter=a,o.geometry.dispose(),o.material.dispose(),this}clear(t,e=!0,n=!0,s=!0){let r=t.getRenderTarget();for(let o=0;o<6;o++)t.setRenderTarget(this,o),t.clear(e,n,s);t.setRenderTarget(r)}},Vm=256,BM=3,kM=20,hg=256,ug=16,zM=3,VM=new W,GM=new ae,Bc=class i{constructor(t){this._renderer=t,this._cubeSize=0,this._sourceTarget=null,this._cubeCamera=new Qr(1,10,null),this._boxMesh=new Rn(new jr(5,5,5),null),this._cubemapMaterial=null,this._equirectMaterial=null,this._blurMaterial=null,this._ggxMaterial=null,this._integrationMaterial=null}fromScene(t,e=0,n=.1,s=100,r={}){let{size:o=256,position:a=VM}=r,c=this._renderer;this._setSize(o);let l=this._allocateTarget(),u=this._getSourceTarget(!0);e>0&&(u.texture.mipmapsAutoUpdate=!1);let h=c.autoClear,d=c.autoClearColor,f=c.autoClearDepth,g=c.autoClearStencil,v=t.background;c.autoClear=!0,c.autoClearColor=!0,c.autoClearDepth=!0,c.autoClearStencil=!0,v===null&&(t.background=c.getClearColor(GM));let p=new Qr(n,s,u);return p.position.copy(a),p.update(c,t),c.autoClear=h,c.autoClearColor=d,c.autoClearDepth=f,c.autoClearStencil=g,t.background=v,e>0&&(u.texture.mipmapsAutoUpdate=!0,this._blur(l,e)),this._applyPMREM(l),l}fromEquirectangular(t,e=null){return this._fromTexture(t,e)}fromCubemap(t,e=null){return this._fromTexture(t,e)}compileCubemapShader(){this._cubemapMaterial===null&&(this._cubemapMaterial=Wm(),this._compileMaterial(this._cubemapMaterial))}compileEquirectangularShader(){this._equirectMaterial===null&&(this._equirectMaterial=Hm(),this._compileMaterial(this._equirectMaterial))}dispose(){this._sourceTarget!==null&&this._sourceTarget.dispose(),this._cubemapMaterial!==null&&this._cubemapMaterial.dispose(),this._equirectMaterial!==null&&this._equirectMaterial.dispose(),this._blurMaterial!==null&&this._blurMaterial.dispose(),this._ggxMaterial!==null&&this._ggxMaterial.dispose(),this._integrationMaterial!==null&&this._integrationMaterial.dispose(),this._boxMesh.geometry.dispose()}static lodToRoughness(t,e){return e>0?1-Math.sqrt(1-t/e):0}_setSize(t){this._cubeSize=Math.max(Vm,qu(t))}_fromTexture(t,e){t.mapping===rr||t.mapping===io?this._setSize(t.image.length===0?Vm:t.image[0].width||t.image[0].image.width):this._setSize(t.image.width/4);let n=e||this._allocateTarget();return this._textureToCubemap(t),this._applyPMREM(n),n}_allocateTarget(){let t=this._cubeSize,e=Gm(t,!1,!1),n=Math.log2(t)-BM;for(let s=0;s<=n;s++)e.texture.mipmaps.push({width:t>>s,height:t>>s});return e.texture.name="PMREM",e.texture.isPMREMTexture=!0,e}_getSourceTarget(t=!1){let e=this._cubeSize,n=this._sourceTarget;return(n===null||n.width!==e||t&&n.depthBuffer===!1)&&(n!==null&&n.dispose(),this._sourceTarget=Gm(e,!0,t)),this._sourceTarget}_compileMaterial(t){this._boxMesh.material=t,this._renderer.compile(this._boxMesh,this._cubeCamera.children[0])}_renderCube(t,e,n){let s=this._boxMesh,r=this._cubeCamera;s.material=n,r.renderTarget=t,r.activeMipmapLevel=e;let o=t.width>>e;t.viewport.set(0,0,o,o),r.update(this._renderer,s),t.viewport.set(0,0,t.width,t.height)}_textureToCubemap(t){let e;t.mapping===rr||t.mapping===io?(this._cubemapMaterial===null&&(this._cubemapMaterial=Wm()),e=this._cubemapMaterial,e.uniforms.flipEnvMap.value=t.isRenderTargetTexture===!1?-1:1):(this._equirectMaterial===null&&(this._equirectMaterial=Hm()),e=this._equirectMaterial),e.uniforms.envMap.value=t,this._renderCube(this._getSourceTarget(),0,e)}_applyPMREM(t){this._ggxMaterial===null&&(this._ggxMaterial=HM(),this._integrationMaterial=WM());let e=this._cubeSize,n=t.texture.mipmaps.length-1,s=this._ggxMaterial.uniforms;s.envMap.value=this._sourceTarget.texture;let r=this._integrationMaterial.uniforms;r.envMap.value=this._sourceTarget.texture,r.sourceLod.value=Math.log2(e/ug);for(let o=0;o<=n;o++){let a=i.lodToRoughness(o,n);if(o>n-zM)r.roughness.value=a,this._renderCube(t,o,this._integrationMaterial);else{let c=a>0?Math.log2(e)+.5*Math.log2(6/(hg*Math.pow(a,4)))+.5:0;s.roughness.value=a,s.lodBias.value=c,this._renderCube(t,o,this._ggxMaterial)}}}_blur(t,e){this._blurMaterial===null&&(this._blurMaterial=XM());let n=this._blurMaterial,s=n.uniforms,r=this._sourceTarget;s.sigma.value=Math.min(e,Math.PI)/Math.SQRT2,s.envMap.value=r.texture,this._renderCube(t,0,n),s.envMap.value=t.texture,this._renderCube(r,0,n)}};function Gm(i,t,e){return new pa(i,{minFilter:ds,generateMipmaps:t,type:Ii,colorSpace:Fo,depthBuffer:e})}function ma(i,t,e){return new Wi({name:i,uniforms:t,vertexShader:de.cube_vert,fragmentShader:e,side:In,blending:ir,depthTest:!1,depthWrite:!1})}function HM(){return ma("PMREMGGXConvolution",{envMap:{value:null},roughness:{value:0},lodBias:{value:0}},`

		#define GGX_SAMPLES ${hg}u

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float lodBias;

		#include <common>

		// Van der Corput radical inverse
		float radicalInverse_VdC( uint bits ) {

			bits = ( bits << 16u ) | ( bits >> 16u );
			bits = ( ( bits & 0x55555555u ) << 1u ) | ( ( bits & 0xAAAAAAAAu ) >> 1u );
			bits = ( ( bits & 0x33333333u ) << 2u ) | ( ( bits & 0xCCCCCCCCu ) >> 2u );
			bits = ( ( bits & 0x0F0F0F0Fu ) << 4u ) | ( ( bits & 0xF0F0F0F0u ) >> 4u );
			bits = ( ( bits & 0x00FF00FFu ) << 8u ) | ( ( bits & 0xFF00FF00u ) >> 8u );
			return float( bits ) * 2.3283064365386963e-10; // / 0x100000000

		}

		// Hammersley sequence
		vec2 hammersley( uint i, uint N ) {

			return vec2( float( i ) / float( N ), radicalInverse_VdC( i ) );

		}

		void main() {

			vec3 N = normalize( vWorldDirection );

			// For very low roughness, just sample the environment directly
			if ( roughness < 0.001 ) {

				gl_FragColor = vec4( textureLod( envMap, N, 0.0 ).rgb, 1.0 );
				return;

			}

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			// Tangent space basis for VNDF sampling
			vec3 up = abs( N.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, N ) );
			vec3 bitangent = cross( N, tangent );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			for ( uint i = 0u; i < GGX_SAMPLES; i ++ ) {

				vec2 Xi = hammersley( i, GGX_SAMPLES );

				// With V = N, sample the reflected direction directly.
				float invQ = 1.0 / ( 1.0 - Xi.x + alpha2 * Xi.x );
				float NdotL = ( 1.0 - Xi.x - alpha2 * Xi.x ) * invQ;

				if ( NdotL > 0.0 ) {

					float phi = 2.0 * PI * Xi.y;
					float sinTheta = 2.0 * alpha * sqrt( Xi.x * ( 1.0 - Xi.x ) ) * invQ;
					vec3 L = N * NdotL + ( tangent * cos( phi ) + bitangent * sin( phi ) ) * sinTheta;

					// Match the source mip to the sample's solid angle. The terms
					// independent of the sample are precomputed in lodBias.
					float d = alpha2 * invQ;
					float lod = max( log2( d ) + lodBias, 0.0 );

					// Weight by NdotL for the split-sum approximation
					prefilteredColor += textureLod( envMap, L, lod ).rgb * NdotL;
					totalWeight += NdotL;

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function WM(){return ma("PMREMGGXIntegration",{envMap:{value:null},roughness:{value:0},sourceLod:{value:0},sourceSize:{value:ug}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float roughness;
		uniform float sourceLod;
		uniform int sourceSize;

		void main() {

			vec3 N = normalize( vWorldDirection );

			float alpha = roughness * roughness;
			float alpha2 = alpha * alpha;

			float texelSize = 2.0 / float( sourceSize );

			vec3 prefilteredColor = vec3( 0.0 );
			float totalWeight = 0.0;

			// Pair opposite texels: only the one in N's hemisphere contributes.
			for ( int face = 0; face < 3; face ++ ) {

				for ( int y = 0; y < sourceSize; y ++ ) {

					for ( int x = 0; x < sourceSize; x ++ ) {

						vec2 uv = ( vec2( x, y ) + 0.5 ) * texelSize - 1.0;
						vec3 texelDirection = face == 0 ? vec3( 1.0, uv ) : ( face == 1 ? vec3( uv.x, 1.0, uv.y ) : vec3( uv, 1.0 ) );

						float invDistance = inversesqrt( 1.0 + dot( uv, uv ) );
						float NdotL = dot( N, texelDirection );
						texelDirection *= NdotL < 0.0 ? - 1.0 : 1.0;
						NdotL = abs( NdotL ) * invDistance;

						// With V = N, NdotH squared is ( 1 + NdotL ) / 2. Common factors
						// in the GGX distribution and texel solid angle cancel when normalized.
						float d = 1.0 + alpha2 + ( alpha2 - 1.0 ) * NdotL;
						float weight = NdotL * invDistance * invDistance * invDistance / ( d * d );

						prefilteredColor += textureLod( envMap, texelDirection, sourceLod ).rgb * weight;
						totalWeight += weight;

					}

				}

			}

			gl_FragColor = vec4( prefilteredColor / totalWeight, 1.0 );

		}
	`)}function XM(){return ma("PMREMSphericalGaussianBlur",{envMap:{value:null},sigma:{value:0}},`

		#define SAMPLES ${kM}
		#define GOLDEN_ANGLE 2.39996322973

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float sigma;

		#include <common>

		void main() {

			vec3 outputDirection = normalize( vWorldDirection );

			vec3 up = abs( outputDirection.z ) < 0.999 ? vec3( 0.0, 0.0, 1.0 ) : vec3( 1.0, 0.0, 0.0 );
			vec3 tangent = normalize( cross( up, outputDirection ) );
			vec3 bitangent = cross( outputDirection, tangent );

			// Truncate the kernel at three standard deviations or at the antipode.
			float thetaMax = min( 3.0 * sigma, PI );
			float truncation = 1.0 - exp( - 0.5 * thetaMax * thetaMax / ( sigma * sigma ) );

			vec3 accumColor = vec3( 0.0 );
			float accumWeight = 0.0;

			for ( int i = 0; i < SAMPLES; i ++ ) {

				// Stratified inverse-CDF sampling of the Gaussian, placed on a golden-angle spiral.
				float stratum = ( float( i ) + 0.5 ) / float( SAMPLES );
				float theta = sigma * sqrt( - 2.0 * log( 1.0 - stratum * truncation ) );
				float phi = float( i ) * GOLDEN_ANGLE;

				vec3 offset = cos( phi ) * tangent + sin( phi ) * bitangent;
				vec3 sampleDirection = cos( theta ) * outputDirection + sin( theta ) * offset;

				// Correct the planar sample density to solid angle.
				float weight = sin( theta ) / theta;

				accumColor += weight * textureLod( envMap, sampleDirection, 0.0 ).rgb;
				accumWeight += weight;

			}

			gl_FragColor = vec4( accumColor / accumWeight, 1.0 );

		}
	`)}function Hm(){return ma("PMREMEquirectangularToCubemap",{envMap:{value:null}},`

		varying vec3 vWorldDirection;

		uniform sampler2D envMap;

		#include <common>

		void main() {

			// Average four subpixel samples to preserve small, bright features.
			vec3 direction = normalize( vWorldDirection );
			vec3 dx = dFdx( direction ) * 0.25;
			vec3 dy = dFdy( direction ) * 0.25;

			vec3 color = textureLod( envMap, equirectUv( normalize( direction - dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx - dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction - dx + dy ) ), 0.0 ).rgb;
			color += textureLod( envMap, equirectUv( normalize( direction + dx + dy ) ), 0.0 ).rgb;
			gl_FragColor = vec4( color * 0.25, 1.0 );

		}
	`)}function Wm(){return ma("PMREMCubemapToCubemap",{envMap:{value:null},flipEnvMap:{value:-1}},`

		varying vec3 vWorldDirection;

		uniform samplerCube envMap;
		uniform float flipEnvMap;

		void main() {

			gl_FragColor = vec4( textureCube( envMap, vec3( flipEnvMap * vWorldDirection.x, vWorldDirection.yz ) ).rgb, 1.0 );

		}
	`)}function qM(i){let t=new WeakMap,e=new WeakMap,n=null;function s(d,f=!1){return d==null?null:f?o(d):r(d)}function r(d){if(d&&d.isTexture){let f=d.mapping;if(f===Jl||f===Kl)if(t.has(d)){let g=t.get(d).texture;return a(g,d.mapping)}else{let g=d.image;if(g&&g.height>0){let v=new pa(g.height);return v.fromEquirectangularTexture(i,d),t.set(d,v),d.addEventListener("dispose",l),a(v.texture,d.mapping)}else return null}}return d}function o(d){if(d&&d.isTexture&&d.isPMREMTexture!==!0){let f=d.mapping,g=f===Jl||f===Kl,v=f===rr||f===io;if(g||v){let p=e.get(d),m=p!==void 0?p.texture.pmremVersion:0;if(d.isRenderTargetTexture&&d.pmremVersion!==m)return n===null&&(n=new Bc(i)),p=g?n.fromEquirectangular(d,p):n.fromCubemap(d,p),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),p.texture;if(p!==void 0)return p.texture;{let y=d.image;return g&&y&&y.height>0||v&&y&&c(y)?(n===null&&(n=new Bc(i)),p=g?n.fromEquirectangular(d):n.fromCubemap(d),p.texture.pmremVersion=d.pmremVersion,e.set(d,p),d.addEventListener("dispose",u),p.texture):null}}}return d}function a(d,f){return f===Jl?d.mapping=rr:f===Kl&&(d.mapping=io),d}function c(d){let f=0,g=6;for(let v=0;v<g;v++)d[v]!==void 0&&f++;return f===g}function l(d){let f=d.target;f.removeEventListener("dispose",l);let g=t.get(f);g!==void 0&&(t.delete(f),g.dispose())}function u(d){let f=d.target;f.removeEventListener("dispose",u);let g=e.get(f);g!==void 0&&(e.delete(f),g.dispose())}function h(){t=new WeakMap,e=new WeakMap,n!==null&&(n.dispose(),n=null)}return{get:s,dispose:h}}function YM(i){let t={};function e(n){if(t[n]!==void 0)return t[n];let s=i.getExtension(n);return t[n]=s,s}return{has:function(n){return e(n)!==null},init:function(){e("EXT_color_buffer_float"),e("WEBGL_clip_cull_distance"),e("OES_texture_float_linear"),e("EXT_color_buffer_half_float"),e("WEBGL_multisampled_render_to_texture"),e("WEBGL_render_shared_exponent")},get:function(n){let s=e(n);return s===null&&Lo("WebGLRenderer: "+n+" extension not supported."),s}}}function $M(i,t,e,n){let s={},r=new WeakMap,o=new FinalizationRegistry(g=>delete s[g]);function a(g){c(g.target)}function c(g){g.index!==null&&t.remove(g.index);for(let p in g.attributes)t.remove(g.attributes[p]);g.removeEventListener("dispose",a),delete s[g.id],o.unregister(g);let v=r.get(g);v&&(t.remove(v),r.delete(g)),n.releaseStatesOfGeometry(g),g.isInstancedBufferGeometry===!0&&delete g._maxInstanceCount,e.memory.geometries--}function l(g,v){return s[v.id]!==void 0||(v.addEventListener("dispose",a),s[v.id]=new WeakRef(v),o.register(v,v.id,v),e.memory.geometries++),v}function u(g){let v=g.attributes;for(let p in v)t.update(v[p],i.ARRAY_BUFFER)}function h(g){let v=g.index,p=g.attributes.position,m=0;if(p===void 0)return;let y=v!==null?v.array.length:p.array.length/3-1,A=p.count>=65535?Ho:Go,M=new A(Math.ceil(y/3)*6,1),R=M.array;if(v!==null){let _=v.array;m=v.version;for(let T=0,O=0;T<y;T+=3){let N=_[T+0],I=_[T+1],V=_[T+2];R[O++]=N,R[O++]=I,R[O++]=I,R[O++]=V,R[O++]=V,R[O++]=N}}else{m=p.version;for(let _=0,T=0;_<y;_+=3){let O=_+0,N=_+1,I=_+2;R[T++]=O,R[T++]=N,R[T++]=N,R[T++]=I,R[T++]=I,R[T++]=O}}M.version=m;let E=r.get(g);E&&t.remove(E),r.set(g,M)}function d(g){let v=r.get(g);if(v){let p=g.index;p!==null&&v.version<p.version&&h(g)}else h(g);return r.get(g)}function f(){for(let g in s){let v=s[g].deref();v!==void 0&&c(v)}}return{get:l,update:u,getWireframeAttribute:d,dispose:f}}function ZM(i,t,e){let n;function s(h){n=h}let r,o;function a(h){r=h.type,o=h.bytesPerElement}function c(h,d){i.drawElements(n,d,r,h*o),e.update(d,n,1)}function l(h,d,f){f!==0&&(i.drawElementsInstanced(n,d,r,h*o,f),e.update(d,n,f))}function u(h,d,f){if(f===0)return;t.get("WEBGL_multi_draw").multiDrawElementsWEBGL(n,d,0,r,h,0,f);let v=0;for(let p=0;p<f;p++)v+=d[p];e.update(v,n,1)}this.setMode=s,this.setIndex=a,this.render=c,this.renderInstances=l,this.renderMultiDraw=u}function JM(i){let t={geometries:0,textures:0},e={frame:0,calls:0,triangles:0,points:0,lines:0};function n(r,o,a){switch(e.calls++,o){case i.TRIANGLES:e.triangles+=a*(r/3);break;case i.LINES:e.lines+=a*(r/2);break;case i.LINE_STRIP:e.lines+=a*(r-1);break;case i.LINE_LOOP:e.lines+=a*r;break;case i.POINTS:e.points+=a*r;break;default:ne("WebGLInfo: Unknown draw mode:",o);break}}function s(){e.calls=0,e.triangles=0,e.points=0,e.lines=0}return{memory:t,render:e,programs:null,autoReset:!0,reset:s,update:n}}function KM(i,t,e){let n=new WeakMap,s=new $e;function r(o,a,c){let l=o.morphTargetInfluences,u=a.morphAttributes.position||a.morphAttributes.normal||a.morphAttributes.color,h=u!==void 0?u.length:0,d=n.get(a);if(d===void 0||d.count!==h){let O=function(){_.dispose(),n.delete(a),a.removeEventListener("dispose",O)};d!==void 0&&d.texture.dispose();let f=a.morphAttributes.position!==void 0,g=a.morphAttributes.normal!==void 0,v=a.morphAttributes.color!==void 0,p=a.morphAttributes.position||[],m=a.morphAttributes.normal||[],y=a.morphAttributes.color||[],A=0;f===!0&&(A=1),g===!0&&(A=2),v===!0&&(A=3);let M=a.attributes.position.count*A,R=1;M>t.maxTextureSize&&(R=Math.ceil(M/t.maxTextureSize),M=t.maxTextureSize);let E=new Float32Array(M*R*4*h),_=new ko(E,M,R,h);_.type=Pi,_.needsUpdate=!0;let T=A*4;for(let N=0;N<h;N++){let I=p[N],V=m[N],G=y[N],D=M*R*4*N;for(let H=0;H<I.count;H++){let Y=H*T;f===!0&&(s.fromBufferAttribute(I,H),E[D+Y+0]=s.x,E[D+Y+1]=s.y,E[D+Y+2]=s.z,E[D+Y+3]=0),g===!0&&(s.fromBufferAttribute(V,H),E[D+Y+4]=s.x,E[D+Y+5]=s.y,E[D+Y+6]=s.z,E[D+Y+7]=0),v===!0&&(s.fromBufferAttribute(G,H),E[D+Y+8]=s.x,E[D+Y+9]=s.y,E[D+Y+10]=s.z,E[D+Y+11]=G.itemSize===4?s.w:1)}}d={count:h,texture:_,size:new ie(M,R)},n.set(a,d),a.addEventListener("dispose",O)}if(o.isInstancedMesh===!0&&o.morphTexture!==null)c.getUniforms().setValue(i,"morphTexture",o.morphTexture,e);else{let f=0;for(let v=0;v<l.length;v++)f+=l[v];let g=a.morphTargetsRelative?1:1-f;c.getUniforms().setValue(i,"morphTargetBaseInfluence",g),c.getUniforms().setValue(i,"morphTargetInfluences",l)}c.getUniforms().setValue(i,"morphTargetsTexture",d.texture,e),c.getUniforms().setValue(i,"morphTargetsTextureSize",d.size)}return{update:r}}function jM(i,t,e,n,s){let r=new WeakMap;function o(l){let u=s.render.frame,h=l.geometry,d=t.get(l,h);if(r.get(d)!==u&&(t.update(d),r.set(d,u)),l.isInstancedMesh&&(l.hasEventListener("dispose",c)===!1&&l.addEventListener("dispose",c),r.get(l)!==u&&(e.update(l.instanceMatrix,i.ARRAY_BUFFER),l.instanceColor!==null&&e.update(l.instanceColor,i.ARRAY_BUFFER),r.set(l,u))),l.isSkinnedMesh){let f=l.skeleton;r.get(f)!==u&&(f.update(),r.set(f,u))}return d}function a(){r=new WeakMap}function c(l){let u=l.target;u.removeEventListener("dispose",c),n.releaseStatesOfObject(u),e.remove(u.instanceMatrix),u.instanceColor!==null&&e.remove(u.instanceColor)}return{update:o,dispose:a}}var QM={[Eu]:"LINEAR_TONE_MAPPING",[Tu]:"REINHARD_TONE_MAPPING",[Au]:"CINEON_TONE_MAPPING",[Ru]:"ACES_FILMIC_TONE_MAPPING",[Pu]:"AGX_TONE_MAPPING",[Iu]:"NEUTRAL_TONE_MAPPING",[Cu]:"CUSTOM_TONE_MAPPING"};function tS(i,t,e,n,s,r){let o=new ci(t,e,{type:i,depthBuffer:s,stencilBuffer:r,samples:n?4:0,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,resolveDepthBuffer:!1,resolveStencilBuffer:!1}),a=null,c=null,l=null,u=new On;u.setAttribute("position",new Pn([-1,3,0,-1,-1,0,3,-1,0],3)),u.setAttribute("uv",new Pn([0,2,0,0,2,0],2));let h=new Nl({uniforms:{tDiffuse:{value:null}},vertexShader:`
			precision highp float;

			uniform mat4 modelViewMatrix;
			uniform mat4 projectionMatrix;

			attribute vec3 position;
			attribute vec2 uv;

			varying vec2 vUv;

			void main() {
				vUv = uv;
				gl_Position = projectionMatrix * modelViewMatrix * vec4( position, 1.0 );
			}`,fragmentShader:`
			precision highp float;

			uniform sampler2D tDiffuse;

			varying vec2 vUv;

			#include <tonemapping_pars_fragment>
			#include <colorspace_pars_fragment>

			void main() {
				gl_FragColor = texture2D( tDiffuse, vUv );

				#ifdef LINEAR_TONE_MAPPING
					gl_FragColor.rgb = LinearToneMapping( gl_FragColor.rgb );
				#elif defined( REINHARD_TONE_MAPPING )
					gl_FragColor.rgb = ReinhardToneMapping( gl_FragColor.rgb );
				#elif defined( CINEON_TONE_MAPPING )
					gl_FragColor.rgb = CineonToneMapping( gl_FragColor.rgb );
				#elif defined( ACES_FILMIC_TONE_MAPPING )
					gl_FragColor.rgb = ACESFilmicToneMapping( gl_FragColor.rgb );
				#elif defined( AGX_TONE_MAPPING )
					gl_FragColor.rgb = AgXToneMapping( gl_FragColor.rgb );
				#elif defined( NEUTRAL_TONE_MAPPING )
					gl_FragColor.rgb = NeutralToneMapping( gl_FragColor.rgb );
				#elif defined( CUSTOM_TONE_MAPPING )
					gl_FragColor.rgb = CustomToneMapping( gl_FragColor.rgb );
				#endif

				#ifdef SRGB_TRANSFER
					gl_FragColor = sRGBTransferOETF( gl_FragColor );
				#endif
			}`,depthTest:!1,depthWrite:!1}),d=new Rn(u,h),f=new ta(-1,1,1,-1,0,1),g=null,v=null,p=!1,m,y=null,A=[],M=!1;this.setSize=function(R,E){o.setSize(R,E),a!==null&&a.setSize(R,E),c!==null&&c.setSize(R,E);for(let _=0;_<A.length;_++){let T=A[_];T.setSize&&T.setSize(R,E)}},this.setEffects=function(R){A=R,M=A.length>0&&A[0].isRenderPass===!0;let E=o.width,_=o.height;A.length>0&&a===null&&(a=new ci(E,_,{type:Ii,depthBuffer:!1,stencilBuffer:!1}),c=new ci(E,_,{type:Ii,depthBuffer:!1,stencilBuffer:!1}));let T=s===!0&&A.some(O=>O.needsDepthTexture===!0);T!==(o.depthTexture!==null)&&(T===!0&&l===null&&(l=new us(E,_),r===!0&&(l.format=fs,l.type=or)),o.dispose(),o.depthTexture=T?l:null,o.resolveDepthBuffer=T,o.storeMultisampledDepthBuffer=T);for(let O=0;O<A.length;O++){let N=A[O];N.setSize&&N.setSize(E,_),T&&N.needsDepthTexture===!0&&N.setDepthTexture&&N.setDepthTexture(l)}},this.begin=function(R,E){if(p||R.toneMapping===Xi&&A.length===0)return!1;if(y=E,E!==null){let _=E.width,T=E.height;(o.width!==_||o.height!==T)&&this.setSize(_,T)}return M===!1&&R.setRenderTarget(o),m=R.toneMapping,R.toneMapping=Xi,!0},this.hasRenderPass=function(){return M},this.end=function(R,E){R.toneMapping=m,p=!0;let _=o,T=a;for(let O=0;O<A.length;O++){let N=A[O];N.enabled!==!1&&(N.render(R,T,_,E),N.needsSwap!==!1&&(_=T,T=T===a?c:a))}if(g!==R.outputColorSpace||v!==R.toneMapping){g=R.outputColorSpace,v=R.toneMapping,h.defines={},ye.getTransfer(g)===Re&&(h.defines.SRGB_TRANSFER="");let O=QM[v];O&&(h.defines[O]=""),h.needsUpdate=!0}h.uniforms.tDiffuse.value=_.texture,R.setRenderTarget(y),R.render(d,f),y=null,p=!1},this.isCompositing=function(){return p},this.dispose=function(){o.dispose(),a!==null&&a.dispose(),c!==null&&c.dispose(),u.dispose(),h.dispose()}}var dg=new Zn,fg=new us(1,1),pg=new Yo(1),mg=new ko,gg=new Cl,_g=new qo,Xm=[],qm=[],Ym=new Float32Array(16),$m=new Float32Array(9),Zm=new Float32Array(4);function ao(i,t,e){let n=i[0];if(n<=0||n>0)return i;let s=t*e,r=Xm[s];if(r===void 0&&(r=new Float32Array(s),Xm[s]=r),t!==0){n.toArray(r,0);for(let o=1,a=0;o!==t;++o)a+=e,i[o].toArray(r,a)}return r}function _n(i,t){if(i.length!==t.length)return!1;for(let e=0,n=i.length;e<n;e++)if(i[e]!==t[e])return!1;return!0}function xn(i,t){for(let e=0,n=t.length;e<n;e++)i[e]=t[e]}function zc(i,t){let e=qm[t];e===void 0&&(e=new Int32Array(t),qm[t]=e);for(let n=0;n!==t;++n)e[n]=i.allocateTextureUnit();return e}function eS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1f(this.addr,t),e[0]=t)}function nS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2f(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2fv(this.addr,t),xn(e,t)}}function iS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3f(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else if(t.r!==void 0)(e[0]!==t.r||e[1]!==t.g||e[2]!==t.b)&&(i.uniform3f(this.addr,t.r,t.g,t.b),e[0]=t.r,e[1]=t.g,e[2]=t.b);else{if(_n(e,t))return;i.uniform3fv(this.addr,t),xn(e,t)}}function sS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4f(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4fv(this.addr,t),xn(e,t)}}function rS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix2fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;Zm.set(n),i.uniformMatrix2fv(this.addr,!1,Zm),xn(e,n)}}function oS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix3fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;$m.set(n),i.uniformMatrix3fv(this.addr,!1,$m),xn(e,n)}}function aS(i,t){let e=this.cache,n=t.elements;if(n===void 0){if(_n(e,t))return;i.uniformMatrix4fv(this.addr,!1,t),xn(e,t)}else{if(_n(e,n))return;Ym.set(n),i.uniformMatrix4fv(this.addr,!1,Ym),xn(e,n)}}function lS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1i(this.addr,t),e[0]=t)}function cS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2i(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2iv(this.addr,t),xn(e,t)}}function hS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3i(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(_n(e,t))return;i.uniform3iv(this.addr,t),xn(e,t)}}function uS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4i(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4iv(this.addr,t),xn(e,t)}}function dS(i,t){let e=this.cache;e[0]!==t&&(i.uniform1ui(this.addr,t),e[0]=t)}function fS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y)&&(i.uniform2ui(this.addr,t.x,t.y),e[0]=t.x,e[1]=t.y);else{if(_n(e,t))return;i.uniform2uiv(this.addr,t),xn(e,t)}}function pS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z)&&(i.uniform3ui(this.addr,t.x,t.y,t.z),e[0]=t.x,e[1]=t.y,e[2]=t.z);else{if(_n(e,t))return;i.uniform3uiv(this.addr,t),xn(e,t)}}function mS(i,t){let e=this.cache;if(t.x!==void 0)(e[0]!==t.x||e[1]!==t.y||e[2]!==t.z||e[3]!==t.w)&&(i.uniform4ui(this.addr,t.x,t.y,t.z,t.w),e[0]=t.x,e[1]=t.y,e[2]=t.z,e[3]=t.w);else{if(_n(e,t))return;i.uniform4uiv(this.addr,t),xn(e,t)}}function Vc(i){return i.version===0&&(i.compareFunction=Gu,i.needsUpdate=!0),i}function gS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_2D_SHADOW?r=Vc(fg):r=dg,e.setTexture2D(t||r,s)}function _S(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture3D(t||gg,s)}function xS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s);let r;this.type===i.SAMPLER_CUBE_SHADOW?r=Vc(pg):r=_g,e.setTextureCube(t||r,s)}function yS(i,t,e){let n=this.cache,s=e.allocateTextureUnit();n[0]!==s&&(i.uniform1i(this.addr,s),n[0]=s),e.setTexture2DArray(t||mg,s)}function vS(i){switch(i){case 5126:return eS;case 35664:return nS;case 35665:return iS;case 35666:return sS;case 35674:return rS;case 35675:return oS;case 35676:return aS;case 5124:case 35670:return lS;case 35667:case 35671:return cS;case 35668:case 35672:return hS;case 35669:case 35673:return uS;case 5125:return dS;case 36294:return fS;case 36295:return pS;case 36296:return mS;case 35678:case 36198:case 36298:case 36306:case 35682:return gS;case 35679:case 36299:case 36307:return _S;case 35680:case 36300:case 36308:case 36293:return xS;case 36289:case 36303:case 36311:case 36292:return yS}}function MS(i,t){i.uniform1fv(this.addr,t)}function SS(i,t){let e=ao(t,this.size,2);i.uniform2fv(this.addr,e)}function bS(i,t){let e=ao(t,this.size,3);i.uniform3fv(this.addr,e)}function wS(i,t){let e=ao(t,this.size,4);i.uniform4fv(this.addr,e)}function ES(i,t){let e=ao(t,this.size,4);i.uniformMatrix2fv(this.addr,!1,e)}function TS(i,t){let e=ao(t,this.size,9);i.uniformMatrix3fv(this.addr,!1,e)}function AS(i,t){let e=ao(t,this.size,16);i.uniformMatrix4fv(this.addr,!1,e)}function RS(i,t){i.uniform1iv(this.addr,t)}function CS(i,t){i.uniform2iv(this.addr,t)}function PS(i,t){i.uniform3iv(this.addr,t)}function IS(i,t){i.uniform4iv(this.addr,t)}function LS(i,t){i.uniform1uiv(this.addr,t)}function DS(i,t){i.uniform2uiv(this.addr,t)}function NS(i,t){i.uniform3uiv(this.addr,t)}function US(i,t){i.uniform4uiv(this.addr,t)}function FS(i,t,e){let n=this.cache,s=t.length,r=zc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));let o;this.type===i.SAMPLER_2D_SHADOW?o=Vc(fg):o=dg;for(let a=0;a!==s;++a)e.setTexture2D(t[a]||o,r[a])}function OS(i,t,e){let n=this.cache,s=t.length,r=zc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));for(let o=0;o!==s;++o)e.setTexture3D(t[o]||gg,r[o])}function BS(i,t,e){let n=this.cache,s=t.length,r=zc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));let o;this.type===i.SAMPLER_CUBE_SHADOW?o=Vc(pg):o=_g;for(let a=0;a!==s;++a)e.setTextureCube(t[a]||o,r[a])}function kS(i,t,e){let n=this.cache,s=t.length,r=zc(e,s);_n(n,r)||(i.uniform1iv(this.addr,r),xn(n,r));for(let o=0;o!==s;++o)e.setTexture2DArray(t[o]||mg,r[o])}function zS(i){switch(i){case 5126:return MS;case 35664:return SS;case 35665:return bS;case 35666:return wS;case 35674:return ES;case 35675:return TS;case 35676:return AS;case 5124:case 35670:return RS;case 35667:case 35671:return CS;case 35668:case 35672:return PS;case 35669:case 35673:return IS;case 5125:return LS;case 36294:return DS;case 36295:return NS;case 36296:return US;case 35678:case 36198:case 36298:case 36306:case 35682:return FS;case 35679:case 36299:case 36307:return OS;case 35680:case 36300:case 36308:case 36293:return BS;case 36289:case 36303:case 36311:case 36292:return kS}}var ed=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.setValue=vS(e.type)}},nd=class{constructor(t,e,n){this.id=t,this.addr=n,this.cache=[],this.type=e.type,this.size=e.size,this.setValue=zS(e.type)}},id=class{constructor(t){this.id=t,this.seq=[],this.map={}}setValue(t,e,n){let s=this.seq;for(let r=0,o=s.length;r!==o;++r){let a=s[r];a.setValue(t,e[a.id],n)}}},Qu=/(\w+)(\])?(\[|\.)?/g;function Jm(i,t){i.seq.push(t),i.map[t.id]=t}function VS(i,t,e){let n=i.name,s=n.length;for(Qu.lastIndex=0;;){let r=Qu.exec(n),o=Qu.lastIndex,a=r[1],c=r[2]==="]",l=r[3];if(c&&(a=a|0),l===void 0||l==="["&&o+2===s){Jm(e,l===void 0?new ed(a,i,t):new nd(a,i,t));break}else{let h=e.map[a];h===void 0&&(h=new id(a),Jm(e,h)),e=h}}}var oo=class{constructor(t,e){this.seq=[],this.map={};let n=t.getProgramParameter(e,t.ACTIVE_UNIFORMS);for(let o=0;o<n;++o){let a=t.getActiveUniform(e,o),c=t.getUniformLocation(e,a.name);VS(a,c,this)}let s=[],r=[];for(let o of this.seq)o.type===t.SAMPLER_2D_SHADOW||o.type===t.SAMPLER_CUBE_SHADOW||o.type===t.SAMPLER_2D_ARRAY_SHADOW?s.push(o):r.push(o);s.length>0&&(this.seq=s.concat(r))}setValue(t,e,n,s){let r=this.map[e];r!==void 0&&r.setValue(t,n,s)}setOptional(t,e,n){let s=e[n];s!==void 0&&this.setValue(t,n,s)}static upload(t,e,n,s){for(let r=0,o=e.length;r!==o;++r){let a=e[r],c=n[a.id];c.needsUpdate!==!1&&a.setValue(t,c.value,s)}}static seqWithValue(t,e){let n=[];for(let s=0,r=t.length;s!==r;++s){let o=t[s];o.id in e&&n.push(o)}return n}};function Km(i,t,e){let n=i.createShader(t);return i.shaderSource(n,e),i.compileShader(n),n}var GS=37297,HS=0;function WS(i,t){let e=i.split(`
`),n=[],s=Math.max(t-6,0),r=Math.min(t+6,e.length);for(let o=s;o<r;o++){let a=o+1;n.push(`${a===t?">":" "} ${a}: ${e[o]}`)}return n.join(`
`)}var jm=new se;function XS(i){ye._getMatrix(jm,ye.workingColorSpace,i);let t=`mat3( ${jm.elements.map(e=>e.toFixed(4))} )`;switch(ye.getTransfer(i)){case Oo:return[t,"LinearTransferOETF"];case Re:return[t,"sRGBTransferOETF"];default:return Zt("WebGLProgram: Unsupported color space: ",i),[t,"LinearTransferOETF"]}}function Qm(i,t,e){let n=i.getShaderParameter(t,i.COMPILE_STATUS),r=(i.getShaderInfoLog(t)||"").trim();if(n&&r==="")return"";let o=/ERROR: 0:(\d+)/.exec(r);if(o){let a=parseInt(o[1]);return e.toUpperCase()+`

`+r+`

`+WS(i.getShaderSource(t),a)}else return r}function qS(i,t){let e=XS(t);return[`vec4 ${i}( vec4 value ) {`,`	return ${e[1]}( vec4( ${e[0]} * value.rgb, value.a ) );`,"}"].join(`
`)}var YS={[Eu]:"Linear",[Tu]:"Reinhard",[Au]:"Cineon",[Ru]:"ACESFilmic",[Pu]:"AgX",[Iu]:"Neutral",[Cu]:"Custom"};function $S(i,t){let e=YS[t];return e===void 0?(Zt("WebGLProgram: Unsupported toneMapping:",t),"vec3 "+i+"( vec3 color ) { return LinearToneMapping( color ); }"):"vec3 "+i+"( vec3 color ) { return "+e+"ToneMapping( color ); }"}var Oc=new W;function ZS(){ye.getLuminanceCoefficients(Oc);let i=Oc.x.toFixed(4),t=Oc.y.toFixed(4),e=Oc.z.toFixed(4);return["float luminance( const in vec3 rgb ) {",`	const vec3 weights = vec3( ${i}, ${t}, ${e} );`,"	return dot( weights, rgb );","}"].join(`
`)}function JS(i){return[i.extensionClipCullDistance?"#extension GL_ANGLE_clip_cull_distance : require":"",i.extensionMultiDraw?"#extension GL_ANGLE_multi_draw : require":""].filter(fa).join(`
`)}function KS(i){let t=[];for(let e in i){let n=i[e];n!==!1&&t.push("#define "+e+" "+n)}return t.join(`
`)}function jS(i,t){let e={},n=i.getProgramParameter(t,i.ACTIVE_ATTRIBUTES);for(let s=0;s<n;s++){let r=i.getActiveAttrib(t,s),o=r.name,a=1;r.type===i.FLOAT_MAT2&&(a=2),r.type===i.FLOAT_MAT3&&(a=3),r.type===i.FLOAT_MAT4&&(a=4),e[o]={type:r.type,location:i.getAttribLocation(t,o),locationSize:a}}return e}function fa(i){return i!==""}function tg(i,t){let e=t.numSpotLightShadows+t.numSpotLightMaps-t.numSpotLightShadowsWithMaps;return i.replace(/NUM_SUN_LIGHTS/g,t.numSunLights).replace(/NUM_DIR_LIGHTS/g,t.numDirLights).replace(/NUM_SPOT_LIGHTS/g,t.numSpotLights).replace(/NUM_SPOT_LIGHT_MAPS/g,t.numSpotLightMaps).replace(/NUM_SPOT_LIGHT_COORDS/g,e).replace(/NUM_RECT_AREA_LIGHTS/g,t.numRectAreaLights).replace(/NUM_POINT_LIGHTS/g,t.numPointLights).replace(/NUM_HEMI_LIGHTS/g,t.numHemiLights).replace(/NUM_SUN_LIGHT_SHADOWS/g,t.numSunLightShadows).replace(/NUM_DIR_LIGHT_SHADOWS/g,t.numDirLightShadows).replace(/NUM_SPOT_LIGHT_SHADOWS_WITH_MAPS/g,t.numSpotLightShadowsWithMaps).replace(/NUM_SPOT_LIGHT_SHADOWS/g,t.numSpotLightShadows).replace(/NUM_POINT_LIGHT_SHADOWS/g,t.numPointLightShadows).replace(/NUM_LIGHT_PROBE_GRIDS/g,t.numLightProbeGrids)}function eg(i,t){return i.replace(/NUM_CLIPPING_PLANES/g,t.numClippingPlanes).replace(/UNION_CLIPPING_PLANES/g,t.numClippingPlanes-t.numClipIntersection)}var QS=/^[ \t]*#include +<([\w\d./]+)>/gm;function sd(i){return i.replace(QS,tb)}function tb(i,t){let e=de[t];if(e===void 0)throw new Error("THREE.WebGLProgram: Can not resolve #include <"+t+">");return sd(e)}var eb=/#pragma unroll_loop_start\s+for\s*\(\s*int\s+i\s*=\s*(\d+)\s*;\s*i\s*<\s*(\d+)\s*;\s*i\s*\+\+\s*\)\s*{([\s\S]+?)}\s+#pragma unroll_loop_end/g;function ng(i){return i.replace(eb,nb)}function nb(i,t,e,n){let s="";for(let r=parseInt(t);r<parseInt(e);r++)s+=n.replace(/\[\s*i\s*\]/g,"[ "+r+" ]").replace(/UNROLLED_LOOP_INDEX/g,r);return s}function ig(i){let t=`precision ${i.precision} float;
	precision ${i.precision} int;
	precision ${i.precision} sampler2D;
	precision ${i.precision} samplerCube;
	precision ${i.precision} sampler3D;
	precision ${i.precision} sampler2DArray;
	precision ${i.precision} sampler2DShadow;
	precision ${i.precision} samplerCubeShadow;
	precision ${i.precision} sampler2DArrayShadow;
	precision ${i.precision} isampler2D;
	precision ${i.precision} isampler3D;
	precision ${i.precision} isamplerCube;
	precision ${i.precision} isampler2DArray;
	precision ${i.precision} usampler2D;
	precision ${i.precision} usampler3D;
	precision ${i.precision} usamplerCube;
	precision ${i.precision} usampler2DArray;
	`;return i.precision==="highp"?t+=`
#define HIGH_PRECISION`:i.precision==="mediump"?t+=`
#define MEDIUM_PRECISION`:i.precision==="lowp"&&(t+=`
#define LOW_PRECISION`),t}var ib={[sa]:"SHADOWMAP_TYPE_PCF",[eo]:"SHADOWMAP_TYPE_VSM"};function sb(i){return ib[i.shadowMapType]||"SHADOWMAP_TYPE_BASIC"}var rb={[io]:"ENVMAP_MODE_REFRACTION"};function ob(i){return i.envMap===!1?"ENVMAP_MODE_REFLECTION":rb[i.envMapMode]||"ENVMAP_MODE_REFLECTION"}var ab={[Zl]:"ENVMAP_BLENDING_MULTIPLY",[ym]:"ENVMAP_BLENDING_MIX",[vm]:"ENVMAP_BLENDING_ADD"};function lb(i){return i.envMap===!1?"ENVMAP_BLENDING_NONE":ab[i.combine]||"ENVMAP_BLENDING_NONE"}function cb(i,t,e,n){let s=i.getContext(),r=e.defines,o=e.vertexShader,a=e.fragmentShader,c=sb(e),l=e.envMapPMREM===!0?"ENVMAP_TYPE_PMREM":"ENVMAP_TYPE_CUBE",u=ob(e),h=lb(e),d=JS(e),f=KS(r),g=s.createProgram(),v,p,m=e.glslVersion?"#version "+e.glslVersion+`
`:"";e.isRawShaderMaterial?(v=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(fa).join(`
`),v.length>0&&(v+=`
`),p=["#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f].filter(fa).join(`
`),p.length>0&&(p+=`
`)):(v=[ig(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.extensionClipCullDistance?"#define USE_CLIP_DISTANCE":"",e.batching?"#define USE_BATCHING":"",e.batchingColor?"#define USE_BATCHING_COLOR":"",e.instancing?"#define USE_INSTANCING":"",e.instancingColor?"#define USE_INSTANCING_COLOR":"",e.instancingMorph?"#define USE_INSTANCING_MORPH":"",e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.map?"#define USE_MAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+u:"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.displacementMap?"#define USE_DISPLACEMENTMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.mapUv?"#define MAP_UV "+e.mapUv:"",e.alphaMapUv?"#define ALPHAMAP_UV "+e.alphaMapUv:"",e.lightMapUv?"#define LIGHTMAP_UV "+e.lightMapUv:"",e.aoMapUv?"#define AOMAP_UV "+e.aoMapUv:"",e.emissiveMapUv?"#define EMISSIVEMAP_UV "+e.emissiveMapUv:"",e.bumpMapUv?"#define BUMPMAP_UV "+e.bumpMapUv:"",e.normalMapUv?"#define NORMALMAP_UV "+e.normalMapUv:"",e.displacementMapUv?"#define DISPLACEMENTMAP_UV "+e.displacementMapUv:"",e.metalnessMapUv?"#define METALNESSMAP_UV "+e.metalnessMapUv:"",e.roughnessMapUv?"#define ROUGHNESSMAP_UV "+e.roughnessMapUv:"",e.anisotropyMapUv?"#define ANISOTROPYMAP_UV "+e.anisotropyMapUv:"",e.clearcoatMapUv?"#define CLEARCOATMAP_UV "+e.clearcoatMapUv:"",e.clearcoatNormalMapUv?"#define CLEARCOAT_NORMALMAP_UV "+e.clearcoatNormalMapUv:"",e.clearcoatRoughnessMapUv?"#define CLEARCOAT_ROUGHNESSMAP_UV "+e.clearcoatRoughnessMapUv:"",e.diffuseRoughnessMapUv?"#define DIFFUSE_ROUGHNESSMAP_UV "+e.diffuseRoughnessMapUv:"",e.iridescenceMapUv?"#define IRIDESCENCEMAP_UV "+e.iridescenceMapUv:"",e.iridescenceThicknessMapUv?"#define IRIDESCENCE_THICKNESSMAP_UV "+e.iridescenceThicknessMapUv:"",e.sheenColorMapUv?"#define SHEEN_COLORMAP_UV "+e.sheenColorMapUv:"",e.sheenRoughnessMapUv?"#define SHEEN_ROUGHNESSMAP_UV "+e.sheenRoughnessMapUv:"",e.specularMapUv?"#define SPECULARMAP_UV "+e.specularMapUv:"",e.specularColorMapUv?"#define SPECULAR_COLORMAP_UV "+e.specularColorMapUv:"",e.specularIntensityMapUv?"#define SPECULAR_INTENSITYMAP_UV "+e.specularIntensityMapUv:"",e.transmissionMapUv?"#define TRANSMISSIONMAP_UV "+e.transmissionMapUv:"",e.thicknessMapUv?"#define THICKNESSMAP_UV "+e.thicknessMapUv:"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexNormals?"#define HAS_NORMAL":"",e.vertexColors?"#define USE_COLOR":"",e.vertexAlphas?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.flatShading?"#define FLAT_SHADED":"",e.skinning?"#define USE_SKINNING":"",e.morphTargets?"#define USE_MORPHTARGETS":"",e.morphNormals&&e.flatShading===!1?"#define USE_MORPHNORMALS":"",e.morphColors?"#define USE_MORPHCOLORS":"",e.morphTargetsCount>0?"#define MORPHTARGETS_TEXTURE_STRIDE "+e.morphTextureStride:"",e.morphTargetsCount>0?"#define MORPHTARGETS_COUNT "+e.morphTargetsCount:"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+c:"",e.sizeAttenuation?"#define USE_SIZEATTENUATION":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 modelMatrix;","uniform mat4 modelViewMatrix;","uniform mat4 projectionMatrix;","uniform mat4 viewMatrix;","uniform mat3 normalMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;","#ifdef USE_INSTANCING","	attribute mat4 instanceMatrix;","#endif","#ifdef USE_INSTANCING_COLOR","	attribute vec3 instanceColor;","#endif","#ifdef USE_INSTANCING_MORPH","	uniform sampler2D morphTexture;","#endif","attribute vec3 position;","attribute vec3 normal;","attribute vec2 uv;","#ifdef USE_UV1","	attribute vec2 uv1;","#endif","#ifdef USE_UV2","	attribute vec2 uv2;","#endif","#ifdef USE_UV3","	attribute vec2 uv3;","#endif","#ifdef USE_TANGENT","	attribute vec4 tangent;","#endif","#if defined( USE_COLOR_ALPHA )","	attribute vec4 color;","#elif defined( USE_COLOR )","	attribute vec3 color;","#endif","#ifdef USE_SKINNING","	attribute vec4 skinIndex;","	attribute vec4 skinWeight;","#endif",`
`].filter(fa).join(`
`),p=[ig(e),"#define SHADER_TYPE "+e.shaderType,"#define SHADER_NAME "+e.shaderName,f,e.useFog&&e.fog?"#define USE_FOG":"",e.useFog&&e.fogExp2?"#define FOG_EXP2":"",e.alphaToCoverage?"#define ALPHA_TO_COVERAGE":"",e.map?"#define USE_MAP":"",e.matcap?"#define USE_MATCAP":"",e.envMap?"#define USE_ENVMAP":"",e.envMap?"#define "+l:"",e.envMap?"#define "+u:"",e.envMap?"#define "+h:"",e.envMapPMREM?"#define ENVMAP_MAX_LOD "+e.envMapMaxLod+".0":"",e.envMapPMREM?"#define ENVMAP_SIZE "+e.envMapSize+".0":"",e.lightMap?"#define USE_LIGHTMAP":"",e.aoMap?"#define USE_AOMAP":"",e.bumpMap?"#define USE_BUMPMAP":"",e.normalMap?"#define USE_NORMALMAP":"",e.normalMapObjectSpace?"#define USE_NORMALMAP_OBJECTSPACE":"",e.normalMapTangentSpace?"#define USE_NORMALMAP_TANGENTSPACE":"",e.packedNormalMap?"#define USE_PACKED_NORMALMAP":"",e.emissiveMap?"#define USE_EMISSIVEMAP":"",e.anisotropy?"#define USE_ANISOTROPY":"",e.anisotropyMap?"#define USE_ANISOTROPYMAP":"",e.clearcoat?"#define USE_CLEARCOAT":"",e.clearcoatMap?"#define USE_CLEARCOATMAP":"",e.clearcoatRoughnessMap?"#define USE_CLEARCOAT_ROUGHNESSMAP":"",e.clearcoatNormalMap?"#define USE_CLEARCOAT_NORMALMAP":"",e.diffuseRoughness?"#define USE_DIFFUSE_ROUGHNESS":"",e.diffuseRoughnessMap?"#define USE_DIFFUSE_ROUGHNESSMAP":"",e.dispersion?"#define USE_DISPERSION":"",e.retroreflection?"#define USE_RETROREFLECTION":"",e.iridescence?"#define USE_IRIDESCENCE":"",e.iridescenceMap?"#define USE_IRIDESCENCEMAP":"",e.iridescenceThicknessMap?"#define USE_IRIDESCENCE_THICKNESSMAP":"",e.specularMap?"#define USE_SPECULARMAP":"",e.specularColorMap?"#define USE_SPECULAR_COLORMAP":"",e.specularIntensityMap?"#define USE_SPECULAR_INTENSITYMAP":"",e.roughnessMap?"#define USE_ROUGHNESSMAP":"",e.metalnessMap?"#define USE_METALNESSMAP":"",e.alphaMap?"#define USE_ALPHAMAP":"",e.alphaTest?"#define USE_ALPHATEST":"",e.alphaHash?"#define USE_ALPHAHASH":"",e.sheen?"#define USE_SHEEN":"",e.sheenColorMap?"#define USE_SHEEN_COLORMAP":"",e.sheenRoughnessMap?"#define USE_SHEEN_ROUGHNESSMAP":"",e.transmission?"#define USE_TRANSMISSION":"",e.transmissionMap?"#define USE_TRANSMISSIONMAP":"",e.thicknessMap?"#define USE_THICKNESSMAP":"",e.vertexTangents&&e.flatShading===!1?"#define USE_TANGENT":"",e.vertexColors||e.instancingColor?"#define USE_COLOR":"",e.vertexAlphas||e.batchingColor?"#define USE_COLOR_ALPHA":"",e.vertexUv1s?"#define USE_UV1":"",e.vertexUv2s?"#define USE_UV2":"",e.vertexUv3s?"#define USE_UV3":"",e.pointsUvs?"#define USE_POINTS_UV":"",e.gradientMap?"#define USE_GRADIENTMAP":"",e.flatShading?"#define FLAT_SHADED":"",e.doubleSided?"#define DOUBLE_SIDED":"",e.flipSided?"#define FLIP_SIDED":"",e.shadowMapEnabled?"#define USE_SHADOWMAP":"",e.shadowMapEnabled?"#define "+c:"",e.premultipliedAlpha?"#define PREMULTIPLIED_ALPHA":"",e.numLightProbes>0?"#define USE_LIGHT_PROBES":"",e.decodeVideoTexture?"#define DECODE_VIDEO_TEXTURE":"",e.decodeVideoTextureEmissive?"#define DECODE_VIDEO_TEXTURE_EMISSIVE":"",e.logarithmicDepthBuffer?"#define USE_LOGARITHMIC_DEPTH_BUFFER":"",e.reversedDepthBuffer?"#define USE_REVERSED_DEPTH_BUFFER":"","uniform mat4 viewMatrix;","uniform vec3 cameraPosition;","uniform bool isOrthographic;",e.toneMapping!==Xi?"#define TONE_MAPPING":"",e.toneMapping!==Xi?de.tonemapping_pars_fragment:"",e.toneMapping!==Xi?$S("toneMapping",e.toneMapping):"",e.dithering?"#define DITHERING":"",e.opaque?"#define OPAQUE":"",de.colorspace_pars_fragment,qS("linearToOutputTexel",e.outputColorSpace),ZS(),e.useDepthPacking?"#define DEPTH_PACKING "+e.depthPacking:"",`
`].filter(fa).join(`
`)),o=sd(o),o=tg(o,e),o=eg(o,e),a=sd(a),a=tg(a,e),a=eg(a,e),o=ng(o),a=ng(a),e.isRawShaderMaterial!==!0&&(m=`#version 300 es
`,v=[d,"#define attribute in","#define varying out","#define texture2D texture"].join(`
`)+`
`+v,p=["#define varying in",e.glslVersion===Hu?"":"layout(location = 0) out highp vec4 pc_fragColor;",e.glslVersion===Hu?"":"#define gl_FragColor pc_fragColor","#define gl_FragDepthEXT gl_FragDepth","#define texture2D texture","#define textureCube texture","#define texture2DProj textureProj","#define texture2DLodEXT textureLod","#define texture2DProjLodEXT textureProjLod","#define textureCubeLodEXT textureLod","#define texture2DGradEXT textureGrad","#define texture2DProjGradEXT textureProjGrad","#define textureCubeGradEXT textureGrad"].join(`
`)+`
`+p);let y=m+v+o,A=m+p+a,M=Km(s,s.VERTEX_SHADER,y),R=Km(s,s.FRAGMENT_SHADER,A);s.attachShader(g,M),s.attachShader(g,R),e.index0AttributeName!==void 0?s.bindAttribLocation(g,0,e.index0AttributeName):e.hasPositionAttribute===!0&&s.bindAttribLocation(g,0,"position"),s.linkProgram(g);function E(N){if(i.debug.checkShaderErrors){let I=s.getProgramInfoLog(g)||"",V=s.getShaderInfoLog(M)||"",G=s.getShaderInfoLog(R)||"",D=I.trim(),H=V.trim(),Y=G.trim(),B=!0,lt=!0;if(s.getProgramParameter(g,s.LINK_STATUS)===!1)if(B=!1,typeof i.debug.onShaderError=="function")i.debug.onShaderError(s,g,M,R);else{let Z=Qm(s,M,"vertex"),K=Qm(s,R,"fragment");ne("WebGLProgram: Shader Error "+s.getError()+" - VALIDATE_STATUS "+s.getProgramParameter(g,s.VALIDATE_STATUS)+`

Material Name: `+N.name+`
Material Type: `+N.type+`

Program Info Log: `+D+`
`+Z+`
`+K)}else D!==""?Zt("WebGLProgram: Program Info Log:",D):(H===""||Y==="")&&(lt=!1);lt&&(N.diagnostics={runnable:B,programLog:D,vertexShader:{log:H,prefix:v},fragmentShader:{log:Y,prefix:p}})}s.deleteShader(M),s.deleteShader(R),_=new oo(s,g),T=jS(s,g)}let _;this.getUniforms=function(){return _===void 0&&E(this),_};let T;this.getAttributes=function(){return T===void 0&&E(this),T};let O=e.rendererExtensionParallelShaderCompile===!1;return this.isReady=function(){return O===!1&&(O=s.getProgramParameter(g,GS)),O},this.destroy=function(){n.releaseStatesOfProgram(this),s.deleteProgram(g),this.program=void 0},this.type=e.shaderType,this.name=e.shaderName,this.id=HS++,this.cacheKey=t,this.usedTimes=1,this.program=g,this.vertexShader=M,this.fragmentShader=R,this}var hb=0,rd=class{constructor(){this.shaderCache=new Map,this.materialCache=new Map}update(t,e,n){let s=this._getShaderCacheForMaterial(t);return s.has(e)===!1&&(s.add(e),e.usedTimes++),s.has(n)===!1&&(s.add(n),n.usedTimes++),this}remove(t){let e=this.materialCache.get(t);for(let n of e)n.usedTimes--,n.usedTimes===0&&this.shaderCache.delete(n.code);return this.materialCache.delete(t),this}getVertexShaderStage(t){return this._getShaderStage(t.vertexShader)}getFragmentShaderStage(t){return this._getShaderStage(t.fragmentShader)}dispose(){this.shaderCache.clear(),this.materialCache.clear()}_getShaderCacheForMaterial(t){let e=this.materialCache,n=e.get(t);return n===void 0&&(n=new Set,e.set(t,n)),n}_getShaderStage(t){let e=this.shaderCache,n=e.get(t);return n===void 0&&(n=new od(t),e.set(t,n)),n}},od=class{constructor(t){this.id=hb++,this.code=t,this.usedTimes=0}};function ub(i){return i===ks||i===ha||i===ua}function db(i,t,e,n,s,r){let o=new zo,a=new rd,c=new Set,l=[],u=new Map,h=n.logarithmicDepthBuffer,d={MeshDepthMaterial:"depth",MeshDistanceMaterial:"distance",MeshNormalMaterial:"normal",MeshBasicMaterial:"basic",MeshLambertMaterial:"lambert",MeshPhongMaterial:"phong",MeshToonMaterial:"toon",MeshStandardMaterial:"physical",MeshPhysicalMaterial:"physical",MeshMatcapMaterial:"matcap",LineBasicMaterial:"basic",LineDashedMaterial:"dashed",PointsMaterial:"points",ShadowMaterial:"shadow",SpriteMaterial:"sprite"};function f(_){return c.add(_),_===0?"uv":`uv${_}`}function g(_,T,O,N,I,V){let G=N.fog,D=I.geometry,H=_.isMeshStandardMaterial||_.isMeshLambertMaterial||_.isMeshPhongMaterial?N.environment:null,Y=_.isMeshStandardMaterial||_.isMeshLambertMaterial&&!_.envMap||_.isMeshPhongMaterial&&!_.envMap,B=t.get(_.envMap||H,Y),lt=d[_.type],Z=n.precision;_.precision!==null&&(Z=n.getMaxPrecision(_.precision),Z!==_.precision&&Zt("WebGLProgram.getParameters:",_.precision,"not supported, using",Z,"instead."));let K=D.morphAttributes.position||D.morphAttributes.normal||D.morphAttributes.color,tt=K!==void 0?K.length:0,ut=0;D.morphAttributes.position!==void 0&&(ut=1),D.morphAttributes.normal!==void 0&&(ut=2),D.morphAttributes.color!==void 0&&(ut=3);let ct,j,gt,it;if(lt){let Rt=Yi[lt];ct=Rt.vertexShader,j=Rt.fragmentShader}else{ct=_.vertexShader,j=_.fragmentShader;let Rt=a.getVertexShaderStage(_),he=a.getFragmentShaderStage(_);a.update(_,Rt,he),gt=Rt.id,it=he.id}let pt=i.getRenderTarget(),mt=i.state.buffers.depth.getReversed(),Ft=I.isInstancedMesh===!0,Wt=I.isBatchedMesh===!0,Vt=!!_.map,le=!!_.matcap,ce=!!B,Kt=ce&&B.isPMREMTexture===!0,Ce=!!_.aoMap,Te=!!_.lightMap,qe=!!_.bumpMap&&_.wireframe===!1,De=!!_.normalMap,vn=!!_.displacementMap,ve=!!_.emissiveMap,fn=!!_.metalnessMap,Je=!!_.roughnessMap,sn=_.anisotropy>0,F=_.clearcoat>0,Ct=_.diffuseRoughness>0,Jt=_.dispersion>0,oe=_.retroreflectivity>0,wt=_.iridescence>0,Ue=_.sheen>0,Ht=_.transmission>0,Yt=sn&&!!_.anisotropyMap,C=F&&!!_.clearcoatMap,S=F&&!!_.clearcoatNormalMap,X=F&&!!_.clearcoatRoughnessMap,dt=Ct&&!!_.diffuseRoughnessMap,ot=wt&&!!_.iridescenceMap,vt=wt&&!!_.iridescenceThicknessMap,Mt=Ue&&!!_.sheenColorMap,et=Ue&&!!_.sheenRoughnessMap,st=!!_.specularMap,xt=!!_.specularColorMap,U=!!_.specularIntensityMap,rt=Ht&&!!_.transmissionMap,nt=Ht&&!!_.thicknessMap,Et=!!_.gradientMap,yt=!!_.alphaMap,bt=_.alphaTest>0,Xt=!!_.alphaHash,Qt=!!_.extensions,ht=Xi;_.toneMapped&&(pt===null||pt.isXRRenderTarget===!0)&&(ht=i.toneMapping);let kt=Kt?B.isCompressedCubeTexture?B.image[0].mipmaps:B.mipmaps:null,te={shaderID:lt,shaderType:_.type,shaderName:_.name,vertexShader:ct,fragmentShader:j,defines:_.defines,customVertexShaderID:gt,customFragmentShaderID:it,isRawShaderMaterial:_.isRawShaderMaterial===!0,glslVersion:_.glslVersion,precision:Z,batching:Wt,batchingColor:Wt&&I._colorsTexture!==null,instancing:Ft,instancingColor:Ft&&I.instanceColor!==null,instancingMorph:Ft&&I.morphTexture!==null,outputColorSpace:pt===null?i.outputColorSpace:pt.isXRRenderTarget===!0?pt.texture.colorSpace:ye.workingColorSpace,alphaToCoverage:!!_.alphaToCoverage,map:Vt,matcap:le,envMap:ce,envMapMode:ce&&B.mapping,envMapPMREM:Kt,envMapMaxLod:Kt?kt.length-1:null,envMapSize:Kt?kt[0].width:null,aoMap:Ce,lightMap:Te,bumpMap:qe,normalMap:De,displacementMap:vn,emissiveMap:ve,normalMapObjectSpace:De&&_.normalMapType===bm,normalMapTangentSpace:De&&_.normalMapType===Uc,packedNormalMap:De&&_.normalMapType===Uc&&ub(_.normalMap.format),metalnessMap:fn,roughnessMap:Je,anisotropy:sn,anisotropyMap:Yt,clearcoat:F,clearcoatMap:C,clearcoatNormalMap:S,clearcoatRoughnessMap:X,diffuseRoughness:Ct,diffuseRoughnessMap:dt,dispersion:Jt,retroreflection:oe,iridescence:wt,iridescenceMap:ot,iridescenceThicknessMap:vt,sheen:Ue,sheenColorMap:Mt,sheenRoughnessMap:et,specularMap:st,specularColorMap:xt,specularIntensityMap:U,transmission:Ht,transmissionMap:rt,thicknessMap:nt,gradientMap:Et,opaque:_.transparent===!1&&_.blending===no&&_.alphaToCoverage===!1,alphaMap:yt,alphaTest:bt,alphaHash:Xt,combine:_.combine,mapUv:Vt&&f(_.map.channel),aoMapUv:Ce&&f(_.aoMap.channel),lightMapUv:Te&&f(_.lightMap.channel),bumpMapUv:qe&&f(_.bumpMap.channel),normalMapUv:De&&f(_.normalMap.channel),displacementMapUv:vn&&f(_.displacementMap.channel),emissiveMapUv:ve&&f(_.emissiveMap.channel),metalnessMapUv:fn&&f(_.metalnessMap.channel),roughnessMapUv:Je&&f(_.roughnessMap.channel),anisotropyMapUv:Yt&&f(_.anisotropyMap.channel),clearcoatMapUv:C&&f(_.clearcoatMap.channel),clearcoatNormalMapUv:S&&f(_.clearcoatNormalMap.channel),clearcoatRoughnessMapUv:X&&f(_.clearcoatRoughnessMap.channel),diffuseRoughnessMapUv:dt&&f(_.diffuseRoughnessMap.channel),iridescenceMapUv:ot&&f(_.iridescenceMap.channel),iridescenceThicknessMapUv:vt&&f(_.iridescenceThicknessMap.channel),sheenColorMapUv:Mt&&f(_.sheenColorMap.channel),sheenRoughnessMapUv:et&&f(_.sheenRoughnessMap.channel),specularMapUv:st&&f(_.specularMap.channel),specularColorMapUv:xt&&f(_.specularColorMap.channel),specularIntensityMapUv:U&&f(_.specularIntensityMap.channel),transmissionMapUv:rt&&f(_.transmissionMap.channel),thicknessMapUv:nt&&f(_.thicknessMap.channel),alphaMapUv:yt&&f(_.alphaMap.channel),vertexTangents:!!D.attributes.tangent&&(De||sn),vertexNormals:!!D.attributes.normal,vertexColors:_.vertexColors,vertexAlphas:_.vertexColors===!0&&!!D.attributes.color&&D.attributes.color.itemSize===4,pointsUvs:I.isPoints===!0&&!!D.attributes.uv&&(Vt||yt),fog:!!G,useFog:_.fog===!0,fogExp2:!!G&&G.isFogExp2,flatShading:_.wireframe===!1&&(_.flatShading===!0||D.attributes.normal===void 0&&De===!1&&(_.isMeshLambertMaterial||_.isMeshPhongMaterial||_.isMeshStandardMaterial||_.isMeshPhysicalMaterial)),sizeAttenuation:_.sizeAttenuation===!0,logarithmicDepthBuffer:h,reversedDepthBuffer:mt,skinning:I.isSkinnedMesh===!0,hasPositionAttribute:D.attributes.position!==void 0,morphTargets:D.morphAttributes.position!==void 0,morphNormals:D.morphAttributes.normal!==void 0,morphColors:D.morphAttributes.color!==void 0,morphTargetsCount:tt,morphTextureStride:ut,numSunLights:T.sun.length,numDirLights:T.directional.length,numPointLights:T.point.length,numSpotLights:T.spot.length,numSpotLightMaps:T.spotLightMap.length,numRectAreaLights:T.rectArea.length,numHemiLights:T.hemi.length,numSunLightShadows:T.sunShadowMap.length,numDirLightShadows:T.directionalShadowMap.length,numPointLightShadows:T.pointShadowMap.length,numSpotLightShadows:T.spotShadowMap.length,numSpotLightShadowsWithMaps:T.numSpotLightShadowsWithMaps,numLightProbes:T.numLightProbes,numLightProbeGrids:V.filter(Rt=>Rt.texture!==null).length,numClippingPlanes:r.numPlanes,numClipIntersection:r.numIntersection,dithering:_.dithering,shadowMapEnabled:i.shadowMap.enabled&&O.length>0,shadowMapType:i.shadowMap.type,toneMapping:ht,decodeVideoTexture:Vt&&_.map.isVideoTexture===!0&&ye.getTransfer(_.map.colorSpace)===Re,decodeVideoTextureEmissive:ve&&_.emissiveMap.isVideoTexture===!0&&ye.getTransfer(_.emissiveMap.colorSpace)===Re,premultipliedAlpha:_.premultipliedAlpha,doubleSided:_.side===$n,flipSided:_.side===In,useDepthPacking:_.depthPacking>=0,depthPacking:_.depthPacking||0,index0AttributeName:_.index0AttributeName,extensionClipCullDistance:Qt&&_.extensions.clipCullDistance===!0&&e.has("WEBGL_clip_cull_distance"),extensionMultiDraw:(Qt&&_.extensions.multiDraw===!0||Wt)&&e.has("WEBGL_multi_draw"),rendererExtensionParallelShaderCompile:e.has("KHR_parallel_shader_compile"),customProgramCacheKey:_.customProgramCacheKey()};return te.vertexUv1s=c.has(1),te.vertexUv2s=c.has(2),te.vertexUv3s=c.has(3),c.clear(),te}function v(_){let T=[];if(_.shaderID?T.push(_.shaderID):(T.push(_.customVertexShaderID),T.push(_.customFragmentShaderID)),_.defines!==void 0)for(let O in _.defines)T.push(O),T.push(_.defines[O]);return _.isRawShaderMaterial===!1&&(p(T,_),m(T,_),T.push(i.outputColorSpace)),T.push(_.customProgramCacheKey),T.join()}function p(_,T){_.push(T.precision),_.push(T.outputColorSpace),_.push(T.envMapMode),_.push(T.envMapPMREM),_.push(T.envMapMaxLod),_.push(T.envMapSize),_.push(T.mapUv),_.push(T.alphaMapUv),_.push(T.lightMapUv),_.push(T.aoMapUv),_.push(T.bumpMapUv),_.push(T.normalMapUv),_.push(T.displacementMapUv),_.push(T.emissiveMapUv),_.push(T.metalnessMapUv),_.push(T.roughnessMapUv),_.push(T.anisotropyMapUv),_.push(T.clearcoatMapUv),_.push(T.clearcoatNormalMapUv),_.push(T.clearcoatRoughnessMapUv),_.push(T.diffuseRoughnessMapUv),_.push(T.iridescenceMapUv),_.push(T.iridescenceThicknessMapUv),_.push(T.sheenColorMapUv),_.push(T.sheenRoughnessMapUv),_.push(T.specularMapUv),_.push(T.specularColorMapUv),_.push(T.specularIntensityMapUv),_.push(T.transmissionMapUv),_.push(T.thicknessMapUv),_.push(T.combine),_.push(T.fogExp2),_.push(T.sizeAttenuation),_.push(T.morphTargetsCount),_.push(T.numSunLights),_.push(T.numDirLights),_.push(T.numPointLights),_.push(T.numSpotLights),_.push(T.numSpotLightMaps),_.push(T.numHemiLights),_.push(T.numRectAreaLights),_.push(T.numSunLightShadows),_.push(T.numDirLightShadows),_.push(T.numPointLightShadows),_.push(T.numSpotLightShadows),_.push(T.numSpotLightShadowsWithMaps),_.push(T.numLightProbes),_.push(T.numLightProbeGrids),_.push(T.shadowMapType),_.push(T.toneMapping),_.push(T.numClippingPlanes),_.push(T.numClipIntersection),_.push(T.depthPacking)}function m(_,T){o.disableAll(),T.instancing&&o.enable(0),T.instancingColor&&o.enable(1),T.instancingMorph&&o.enable(2),T.matcap&&o.enable(3),T.envMap&&o.enable(4),T.normalMapObjectSpace&&o.enable(5),T.normalMapTangentSpace&&o.enable(6),T.clearcoat&&o.enable(7),T.iridescence&&o.enable(8),T.alphaTest&&o.enable(9),T.vertexColors&&o.enable(10),T.vertexAlphas&&o.enable(11),T.vertexUv1s&&o.enable(12),T.vertexUv2s&&o.enable(13),T.vertexUv3s&&o.enable(14),T.vertexTangents&&o.enable(15),T.anisotropy&&o.enable(16),T.alphaHash&&o.enable(17),T.batching&&o.enable(18),T.dispersion&&o.enable(19),T.retroreflection&&o.enable(24),T.diffuseRoughness&&o.enable(25),T.batchingColor&&o.enable(20),T.gradientMap&&o.enable(21),T.packedNormalMap&&o.enable(22),T.vertexNormals&&o.enable(23),_.push(o.mask),o.disableAll(),T.fog&&o.enable(0),T.useFog&&o.enable(1),T.flatShading&&o.enable(2),T.logarithmicDepthBuffer&&o.enable(3),T.reversedDepthBuffer&&o.enable(4),T.skinning&&o.enable(5),T.morphTargets&&o.enable(6),T.morphNormals&&o.enable(7),T.morphColors&&o.enable(8),T.premultipliedAlpha&&o.enable(9),T.shadowMapEnabled&&o.enable(10),T.doubleSided&&o.enable(11),T.flipSided&&o.enable(12),T.useDepthPacking&&o.enable(13),T.dithering&&o.enable(14),T.transmission&&o.enable(15),T.sheen&&o.enable(16),T.opaque&&o.enable(17),T.pointsUvs&&o.enable(18),T.decodeVideoTexture&&o.enable(19),T.decodeVideoTextureEmissive&&o.enable(20),T.alphaToCoverage&&o.enable(21),T.numLightProbeGrids>0&&o.enable(22),T.hasPositionAttribute&&o.enable(23),_.push(o.mask)}function y(_){let T=d[_.type],O;if(T){let N=Yi[T];O=Bm.clone(N.uniforms)}else O=_.uniforms;return O}function A(_,T){let O=u.get(T);return O!==void 0?++O.usedTimes:(O=new cb(i,T,_,s),l.push(O),u.set(T,O)),O}function M(_){if(--_.usedTimes===0){let T=l.indexOf(_);l[T]=l[l.length-1],l.pop(),u.delete(_.cacheKey),_.destroy()}}function R(_){a.remove(_)}function E(){a.dispose()}return{getParameters:g,getProgramCacheKey:v,getUniforms:y,acquireProgram:A,releaseProgram:M,releaseShaderCache:R,programs:l,dispose:E}}function fb(){let i=new WeakMap;function t(o){return i.has(o)}function e(o){let a=i.get(o);return a===void 0&&(a={},i.set(o,a)),a}function n(o){i.delete(o)}function s(o,a,c){i.get(o)[a]=c}function r(){i=new WeakMap}return{has:t,get:e,remove:n,update:s,dispose:r}}function pb(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.material.id!==t.material.id?i.material.id-t.material.id:i.materialVariant!==t.materialVariant?i.materialVariant-t.materialVariant:i.z!==t.z?i.z-t.z:i.id-t.id}function sg(i,t){return i.groupOrder!==t.groupOrder?i.groupOrder-t.groupOrder:i.renderOrder!==t.renderOrder?i.renderOrder-t.renderOrder:i.z!==t.z?t.z-i.z:i.id-t.id}function rg(){let i=[],t=0,e=[],n=[],s=[];function r(){t=0,e.length=0,n.length=0,s.length=0}function o(d){let f=0;return d.isInstancedMesh&&(f+=2),d.isSkinnedMesh&&(f+=1),f}function a(d,f,g,v,p,m){let y=i[t];return y===void 0?(y={id:d.id,object:d,geometry:f,material:g,materialVariant:o(d),groupOrder:v,renderOrder:d.renderOrder,z:p,group:m},i[t]=y):(y.id=d.id,y.object=d,y.geometry=f,y.material=g,y.materialVariant=o(d),y.groupOrder=v,y.renderOrder=d.renderOrder,y.z=p,y.group=m),t++,y}function c(d,f,g,v,p,m,y){y.reversedDepth===!0&&(p=-p);let A=a(d,f,g,v,p,m);g.transmission>0?n.push(A):g.transparent===!0?s.push(A):e.push(A)}function l(d,f,g,v,p,m){let y=a(d,f,g,v,p,m);g.transmission>0?n.unshift(y):g.transparent===!0?s.unshift(y):e.unshift(y)}function u(d,f){e.length>1&&e.sort(d||pb),n.length>1&&n.sort(f||sg),s.length>1&&s.sort(f||sg)}function h(){for(let d=t,f=i.length;d<f;d++){let g=i[d];if(g.id===null)break;g.id=null,g.object=null,g.geometry=null,g.material=null,g.group=null}}return{opaque:e,transmissive:n,transparent:s,init:r,push:c,unshift:l,finish:h,sort:u}}function mb(){let i=new WeakMap;function t(n,s){let r=i.get(n),o;return r===void 0?(o=new rg,i.set(n,[o])):s>=r.length?(o=new rg,r.push(o)):o=r[s],o}function e(){i=new WeakMap}return{get:t,dispose:e}}function gb(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={direction:new W,color:new ae};break;case"SpotLight":e={position:new W,direction:new W,color:new ae,distance:0,coneCos:0,penumbraCos:0,decay:0};break;case"PointLight":e={position:new W,color:new ae,distance:0,decay:0};break;case"HemisphereLight":e={direction:new W,skyColor:new ae,groundColor:new ae};break;case"RectAreaLight":e={color:new ae,position:new W,halfWidth:new W,halfHeight:new W};break}return i[t.id]=e,e}}}function _b(){let i={};return{get:function(t){if(i[t.id]!==void 0)return i[t.id];let e;switch(t.type){case"SunLight":case"DirectionalLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ie};break;case"SpotLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ie};break;case"PointLight":e={shadowIntensity:1,shadowBias:0,shadowNormalBias:0,shadowRadius:1,shadowMapSize:new ie,shadowCameraNear:1,shadowCameraFar:1e3};break}return i[t.id]=e,e}}}var xb=0;function yb(i,t){return(t.castShadow?2:0)-(i.castShadow?2:0)+(t.map?1:0)-(i.map?1:0)}function vb(i){let t=new gb,e=_b(),n={version:0,hash:{sunLength:-1,directionalLength:-1,pointLength:-1,spotLength:-1,rectAreaLength:-1,hemiLength:-1,numSunShadows:-1,numDirectionalShadows:-1,numPointShadows:-1,numSpotShadows:-1,numSpotMaps:-1,numLightProbes:-1},ambient:[0,0,0],probe:[],sun:[],sunShadow:[],sunShadowMap:[],sunShadowMatrix:[],sunShadowCascade:[],directional:[],directionalShadow:[],directionalShadowMap:[],directionalShadowMatrix:[],spot:[],spotLightMap:[],spotShadow:[],spotShadowMap:[],spotLightMatrix:[],rectArea:[],rectAreaLTC1:null,rectAreaLTC2:null,point:[],pointShadow:[],pointShadowMap:[],pointShadowMatrix:[],hemi:[],numSpotLightShadowsWithMaps:0,numLightProbes:0};for(let l=0;l<9;l++)n.probe.push(new W);let s=new W,r=new Xe,o=new Xe;function a(l){let u=0,h=0,d=0;for(let V=0;V<9;V++)n.probe[V].set(0,0,0);let f=0,g=0,v=0,p=0,m=0,y=0,A=0,M=0,R=0,E=0,_=0,T=0,O=0,N=0;l.sort(yb);for(let V=0,G=l.length;V<G;V++){let D=l[V],H=D.color,Y=D.intensity,B=D.distance,lt=null;if(D.shadow&&D.shadow.map&&(D.shadow.map.texture.format===ks?lt=D.shadow.map.texture:lt=D.shadow.map.depthTexture||D.shadow.map.texture),D.isAmbientLight)u+=H.r*Y,h+=H.g*Y,d+=H.b*Y;else if(D.isLightProbe){for(let Z=0;Z<9;Z++)n.probe[Z].addScaledVector(D.sh.coefficients[Z],Y);N++}else if(D.isSunLight){let Z=t.get(D);if(Z.color.copy(D.color).multiplyScalar(D.intensity),D.castShadow){let K=D.shadow,tt=e.get(D);tt.shadowIntensity=K.intensity,tt.shadowBias=K.bias,tt.shadowNormalBias=K.normalBias,tt.shadowRadius=K.radius,tt.shadowMapSize.copy(K.mapSize).multiply(K.getFrameExtents()),n.sunShadow[g]=tt,n.sunShadowMap[g]=lt;let ut=K.getViewportCount();for(let ct=0;ct<ut;ct++)n.sunShadowMatrix[v+ct]=K.getMatrix(ct),n.sunShadowCascade[v+ct]=K._cascadeData[ct];v+=ut,g++}n.sun[f]=Z,f++}else if(D.isDirectionalLight){let Z=t.get(D);if(Z.color.copy(D.color).multiplyScalar(D.intensity),D.castShadow){let K=D.shadow,tt=e.get(D);tt.shadowIntensity=K.intensity,tt.shadowBias=K.bias,tt.shadowNormalBias=K.normalBias,tt.shadowRadius=K.radius,tt.shadowMapSize=K.mapSize,n.directionalShadow[p]=tt,n.directionalShadowMap[p]=lt,n.directionalShadowMatrix[p]=D.shadow.matrix,R++}n.directional[p]=Z,p++}else if(D.isSpotLight){let Z=t.get(D);Z.position.setFromMatrixPosition(D.matrixWorld),Z.color.copy(H).multiplyScalar(Y),Z.distance=B,Z.coneCos=Math.cos(D.angle),Z.penumbraCos=Math.cos(D.angle*(1-D.penumbra)),Z.decay=D.decay,n.spot[y]=Z;let K=D.shadow;if(D.map&&(n.spotLightMap[T]=D.map,T++,K.updateMatrices(D),D.castShadow&&O++),n.spotLightMatrix[y]=K.matrix,D.castShadow){let tt=e.get(D);tt.shadowIntensity=K.intensity,tt.shadowBias=K.bias,tt.shadowNormalBias=K.normalBias,tt.shadowRadius=K.radius,tt.shadowMapSize=K.mapSize,n.spotShadow[y]=tt,n.spotShadowMap[y]=lt,_++}y++}else if(D.isRectAreaLight){let Z=t.get(D);Z.color.copy(H).multiplyScalar(Y),Z.halfWidth.set(D.width*.5,0,0),Z.halfHeight.set(0,D.height*.5,0),n.rectArea[A]=Z,A++}else if(D.isPointLight){let Z=t.get(D);if(Z.color.copy(D.color).multiplyScalar(D.intensity),Z.distance=D.distance,Z.decay=D.decay,D.castShadow){let K=D.shadow,tt=e.get(D);tt.shadowIntensity=K.intensity,tt.shadowBias=K.bias,tt.shadowNormalBias=K.normalBias,tt.shadowRadius=K.radius,tt.shadowMapSize=K.mapSize,tt.shadowCameraNear=K.camera.near,tt.shadowCameraFar=K.camera.far,n.pointShadow[m]=tt,n.pointShadowMap[m]=lt,n.pointShadowMatrix[m]=D.shadow.matrix,E++}n.point[m]=Z,m++}else if(D.isHemisphereLight){let Z=t.get(D);Z.skyColor.copy(D.color).multiplyScalar(Y),Z.groundColor.copy(D.groundColor).multiplyScalar(Y),n.hemi[M]=Z,M++}}A>0&&(i.has("OES_texture_float_linear")===!0?(n.rectAreaLTC1=Lt.LTC_FLOAT_1,n.rectAreaLTC2=Lt.LTC_FLOAT_2):(n.rectAreaLTC1=Lt.LTC_HALF_1,n.rectAreaLTC2=Lt.LTC_HALF_2)),n.ambient[0]=u,n.ambient[1]=h,n.ambient[2]=d;let I=n.hash;(I.sunLength!==f||I.directionalLength!==p||I.pointLength!==m||I.spotLength!==y||I.rectAreaLength!==A||I.hemiLength!==M||I.numSunShadows!==g||I.numDirectionalShadows!==R||I.numPointShadows!==E||I.numSpotShadows!==_||I.numSpotMaps!==T||I.numLightProbes!==N)&&(n.sun.length=f,n.directional.length=p,n.spot.length=y,n.rectArea.length=A,n.point.length=m,n.hemi.length=M,n.sunShadow.length=g,n.sunShadowMap.length=g,n.sunShadowMatrix.length=v,n.sunShadowCascade.length=v,n.directionalShadow.length=R,n.directionalShadowMap.length=R,n.directionalShadowMatrix.length=R,n.pointShadow.length=E,n.pointShadowMap.length=E,n.pointShadowMatrix.length=E,n.spotShadow.length=_,n.spotShadowMap.length=_,n.spotLightMatrix.length=_+T-O,n.spotLightMap.length=T,n.numSpotLightShadowsWithMaps=O,n.numLightProbes=N,I.sunLength=f,I.directionalLength=p,I.pointLength=m,I.spotLength=y,I.rectAreaLength=A,I.hemiLength=M,I.numSunShadows=g,I.numDirectionalShadows=R,I.numPointShadows=E,I.numSpotShadows=_,I.numSpotMaps=T,I.numLightProbes=N,n.version=xb++)}function c(l,u){let h=0,d=0,f=0,g=0,v=0,p=0,m=u.matrixWorldInverse;for(let y=0,A=l.length;y<A;y++){let M=l[y];if(M.isSunLight){let R=n.sun[h];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(m),h++}else if(M.isDirectionalLight){let R=n.directional[d];R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),d++}else if(M.isSpotLight){let R=n.spot[g];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),R.direction.setFromMatrixPosition(M.matrixWorld),s.setFromMatrixPosition(M.target.matrixWorld),R.direction.sub(s),R.direction.transformDirection(m),g++}else if(M.isRectAreaLight){let R=n.rectArea[v];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),o.identity(),r.copy(M.matrixWorld),r.premultiply(m),o.extractRotation(r),R.halfWidth.set(M.width*.5,0,0),R.halfHeight.set(0,M.height*.5,0),R.halfWidth.applyMatrix4(o),R.halfHeight.applyMatrix4(o),v++}else if(M.isPointLight){let R=n.point[f];R.position.setFromMatrixPosition(M.matrixWorld),R.position.applyMatrix4(m),f++}else if(M.isHemisphereLight){let R=n.hemi[p];R.direction.setFromMatrixPosition(M.matrixWorld),R.direction.transformDirection(m),p++}}}return{setup:a,setupView:c,state:n}}function og(i){let t=new vb(i),e=[],n=[],s=[];function r(h){u.camera=h,e.length=0,n.length=0,s.length=0}function o(h){h.isLightProbeGrid?s.push(h):e.push(h)}function a(h){n.push(h)}function c(){t.setup(e),s.sort((h,d)=>h.priority-d.priority||h.id-d.id)}function l(h){t.setupView(e,h)}let u={lightsArray:e,shadowsArray:n,lightProbeGridArray:s,camera:null,lights:t,transmissionRenderTarget:{},textureUnits:0};return{init:r,state:u,setupLights:c,setupLightsView:l,pushLight:o,pushShadow:a}}function Mb(i){let t=new WeakMap;function e(s,r=0){let o=t.get(s),a;return o===void 0?(a=new og(i),t.set(s,[a])):r>=o.length?(a=new og(i),o.push(a)):a=o[r],a}function n(){t=new WeakMap}return{get:e,dispose:n}}var Sb=`void main() {
	gl_Position = vec4( position, 1.0 );
}`,bb=`uniform sampler2D shadow_pass;
uniform vec2 resolution;
uniform float radius;
void main() {
	const float samples = float( VSM_SAMPLES );
	float mean = 0.0;
	float squared_mean = 0.0;
	float uvStride = samples <= 1.0 ? 0.0 : 2.0 / ( samples - 1.0 );
	float uvStart = samples <= 1.0 ? 0.0 : - 1.0;
	for ( float i = 0.0; i < samples; i ++ ) {
		float uvOffset = uvStart + i * uvStride;
		#ifdef HORIZONTAL_PASS
			vec2 distribution = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( uvOffset, 0.0 ) * radius ) / resolution ).rg;
			mean += distribution.x;
			squared_mean += distribution.y * distribution.y + distribution.x * distribution.x;
		#else
			float depth = texture2D( shadow_pass, ( gl_FragCoord.xy + vec2( 0.0, uvOffset ) * radius ) / resolution ).r;
			mean += depth;
			squared_mean += depth * depth;
		#endif
	}
	mean = mean / samples;
	squared_mean = squared_mean / samples;
	float std_dev = sqrt( max( 0.0, squared_mean - mean * mean ) );
	gl_FragColor = vec4( mean, std_dev, 0.0, 1.0 );
}`,wb=[new W(1,0,0),new W(-1,0,0),new W(0,1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1)],Eb=[new W(0,-1,0),new W(0,-1,0),new W(0,0,1),new W(0,0,-1),new W(0,-1,0),new W(0,-1,0)],ag=new Xe,da=new W,td=new W;function Tb(i,t,e){let n=new Ls,s=new ie,r=new ie,o=new $e,a=new Ul,c=new Fl,l={},u=e.maxTextureSize,h={[Ri]:In,[In]:Ri,[$n]:$n},d=new Wi({defines:{VSM_SAMPLES:8},uniforms:{shadow_pass:{value:null},resolution:{value:new ie},radius:{value:4}},vertexShader:Sb,fragmentShader:bb}),f=d.clone();f.defines.HORIZONTAL_PASS=1;let g=new On;g.setAttribute("position",new Un(new Float32Array([-1,-1,.5,3,-1,.5,-1,3,.5]),3));let v=new Rn(g,d),p=this;this.enabled=!1,this.autoUpdate=!0,this.needsUpdate=!1,this.type=sa;let m=this.type;this.render=function(E,_,T){if(p.enabled===!1||p.autoUpdate===!1&&p.needsUpdate===!1||E.length===0)return;this.type===tm&&(Zt("WebGLShadowMap: PCFSoftShadowMap has been removed. Using PCFShadowMap instead."),this.type=sa);let O=i.getRenderTarget(),N=i.getActiveCubeFace(),I=i.getActiveMipmapLevel(),V=i.state;V.setBlending(ir),V.buffers.depth.getReversed()===!0?V.buffers.color.setClear(0,0,0,0):V.buffers.color.setClear(1,1,1,1),V.buffers.depth.setTest(!0),V.setScissorTest(!1);let G=m!==this.type;G&&_.traverse(function(D){D.material&&(Array.isArray(D.material)?D.material.forEach(H=>H.needsUpdate=!0):D.material.needsUpdate=!0)});for(let D=0,H=E.length;D<H;D++){let Y=E[D],B=Y.shadow;if(B===void 0){Zt("WebGLShadowMap:",Y,"has no shadow.");continue}if(B.autoUpdate===!1&&B.needsUpdate===!1)continue;s.copy(B.mapSize);let lt=B.getFrameExtents();s.multiply(lt),r.copy(B.mapSize),(s.x>u||s.y>u)&&(s.x>u&&(r.x=Math.floor(u/lt.x),s.x=r.x*lt.x,B.mapSize.x=r.x),s.y>u&&(r.y=Math.floor(u/lt.y),s.y=r.y*lt.y,B.mapSize.y=r.y));let Z=i.state.buffers.depth.getReversed();if(B.camera._reversedDepth=Z,B.map===null||G===!0){if(B.map!==null&&(B.map.depthTexture!==null&&(B.map.depthTexture.dispose(),B.map.depthTexture=null),B.map.dispose()),this.type===eo){if(Y.isPointLight){Zt("WebGLShadowMap: VSM shadow maps are not supported for PointLights. Use PCF or BasicShadowMap instead.");continue}B.map=new ci(s.x,s.y,{format:ks,type:Ii,minFilter:Yn,magFilter:Yn,generateMipmaps:!1}),B.map.texture.name=Y.name+".shadowMap",B.map.depthTexture=new us(s.x,s.y,Pi),B.map.depthTexture.name=Y.name+".shadowMapDepth",B.map.depthTexture.format=as,B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=An,B.map.depthTexture.magFilter=An}else Y.isPointLight?(B.map=new pa(s.x),B.map.depthTexture=new Yo(s.x,Ci)):(B.map=new ci(s.x,s.y),B.map.depthTexture=new us(s.x,s.y,Ci)),B.map.depthTexture.name=Y.name+".shadowMap",B.map.depthTexture.format=as,this.type===sa?(B.map.depthTexture.compareFunction=Z?Vu:zu,B.map.depthTexture.minFilter=Yn,B.map.depthTexture.magFilter=Yn):(B.map.depthTexture.compareFunction=null,B.map.depthTexture.minFilter=An,B.map.depthTexture.magFilter=An);B.camera.updateProjectionMatrix()}B.map.isWebGLCubeRenderTarget!==!0&&(B.map.width!==s.x||B.map.height!==s.y)&&B.map.setSize(s.x,s.y);let K=B.map.isWebGLCubeRenderTarget?6:B.getViewportCount();Y.isPointLight!==!0&&B.updateMatrices(Y,T);let tt=(B.camera.layers.mask&4294967294)!==0?B.camera.layers:T.layers;for(let ut=0;ut<K;ut++){let ct=B.getCamera(ut);if(Y.isPointLight){let j=B.camera,gt=B.matrix,it=Y.distance||j.far;it!==j.far&&(j.far=it,j.updateProjectionMatrix()),da.setFromMatrixPosition(Y.matrixWorld),j.position.copy(da),td.copy(j.position),td.add(wb[ut]),j.up.copy(Eb[ut]),j.lookAt(td),j.updateMatrixWorld(),gt.makeTranslation(-da.x,-da.y,-da.z),ag.multiplyMatrices(j.projectionMatrix,j.matrixWorldInverse),B._frustum.setFromProjectionMatrix(ag,j.coordinateSystem,j.reversedDepth)}if(B.map.isWebGLCubeRenderTarget)i.setRenderTarget(B.map,ut),i.clear();else{ut===0&&(i.setRenderTarget(B.map),i.clear());let j=B.getViewport(ut);o.set(r.x*j.x,r.y*j.y,r.x*j.z,r.y*j.w),V.viewport(o)}n=B.getFrustum(ut),M(_,T,ct,Y,tt,this.type)}B.isPointLightShadow!==!0&&this.type===eo&&y(B,T),B.needsUpdate=!1}m=this.type,p.needsUpdate=!1,i.setRenderTarget(O,N,I)};function y(E,_){let T=t.update(v);d.defines.VSM_SAMPLES!==E.blurSamples&&(d.defines.VSM_SAMPLES=E.blurSamples,f.defines.VSM_SAMPLES=E.blurSamples,d.needsUpdate=!0,f.needsUpdate=!0),E.mapPass===null?E.mapPass=new ci(s.x,s.y,{format:ks,type:Ii}):(E.mapPass.width!==E.map.width||E.mapPass.height!==E.map.height)&&E.mapPass.setSize(E.map.width,E.map.height),d.uniforms.shadow_pass.value=E.map.depthTexture,d.uniforms.resolution.value.set(E.map.width,E.map.height),d.uniforms.radius.value=E.radius,i.setRenderTarget(E.mapPass),i.clear(),i.renderBufferDirect(_,null,T,d,v,null),f.uniforms.shadow_pass.value=E.mapPass.texture,f.uniforms.resolution.value.set(E.map.width,E.map.height),f.uniforms.radius.value=E.radius,i.setRenderTarget(E.map),i.clear(),i.renderBufferDirect(_,null,T,f,v,null)}function A(E,_,T,O){let N=null,I=T.isPointLight===!0?E.customDistanceMaterial:E.customDepthMaterial;if(I!==void 0)N=I;else if(N=T.isPointLight===!0?c:a,i.localClippingEnabled&&_.clipShadows===!0&&Array.isArray(_.clippingPlanes)&&_.clippingPlanes.length!==0||_.displacementMap&&_.displacementScale!==0||_.alphaMap&&_.alphaTest>0||_.map&&_.alphaTest>0||_.alphaToCoverage===!0){let V=N.uuid,G=_.uuid,D=l[V];D===void 0&&(D={},l[V]=D);let H=D[G];H===void 0&&(H=N.clone(),D[G]=H,_.addEventListener("dispose",R)),N=H}if(N.visible=_.visible,N.wireframe=_.wireframe,O===eo?N.side=_.shadowSide!==null?_.shadowSide:_.side:N.side=_.shadowSide!==null?_.shadowSide:h[_.side],N.alphaMap=_.alphaMap,N.alphaTest=_.alphaToCoverage===!0?.5:_.alphaTest,N.map=_.map,N.clipShadows=_.clipShadows,N.clippingPlanes=_.clippingPlanes,N.clipIntersection=_.clipIntersection,N.displacementMap=_.displacementMap,N.displacementScale=_.displacementScale,N.displacementBias=_.displacementBias,N.wireframeLinewidth=_.wireframeLinewidth,N.linewidth=_.linewidth,T.isPointLight===!0&&N.isMeshDistanceMaterial===!0){let V=i.properties.get(N);V.light=T}return N}function M(E,_,T,O,N,I){if(E.visible===!1)return;if(E.layers.test(N)&&(E.isMesh||E.isLine||E.isPoints)&&(E.castShadow||E.receiveShadow&&I===eo)&&(!E.frustumCulled||E.intersectsFrustum(n))){E.modelViewMatrix.multiplyMatrices(T.matrixWorldInverse,E.matrixWorld);let D=t.update(E),H=E.material;if(Array.isArray(H)){let Y=D.groups;for(let B=0,lt=Y.length;B<lt;B++){let Z=Y[B],K=H[Z.materialIndex];if(K&&K.visible){let tt=A(E,K,O,I);E.onBeforeShadow(i,E,_,T,D,tt,Z),i.renderBufferDirect(T,null,D,tt,E,Z),E.onAfterShadow(i,E,_,T,D,tt,Z)}}}else if(H.visible){let Y=A(E,H,O,I);E.onBeforeShadow(i,E,_,T,D,Y,null),i.renderBufferDirect(T,null,D,Y,E,null),E.onAfterShadow(i,E,_,T,D,Y,null)}}let G=E.children;for(let D=0,H=G.length;D<H;D++)M(G[D],_,T,O,N,I)}function R(E){E.target.removeEventListener("dispose",R);for(let T in l){let O=l[T],N=E.target.uuid;N in O&&(O[N].dispose(),delete O[N])}}}function Ab(i,t){function e(){let U=!1,rt=new $e,nt=null,Et=new $e(0,0,0,0);return{setMask:function(yt){nt!==yt&&!U&&(i.colorMask(yt,yt,yt,yt),nt=yt)},setLocked:function(yt){U=yt},setClear:function(yt,bt,Xt,Qt,ht){ht===!0&&(yt*=Qt,bt*=Qt,Xt*=Qt),rt.set(yt,bt,Xt,Qt),Et.equals(rt)===!1&&(i.clearColor(yt,bt,Xt,Qt),Et.copy(rt))},reset:function(){U=!1,nt=null,Et.set(-1,0,0,0)}}}function n(){let U=!1,rt=!1,nt=null,Et=null,yt=null;return{setReversed:function(bt){if(rt!==bt){let Xt=t.get("EXT_clip_control");bt?Xt.clipControlEXT(Xt.LOWER_LEFT_EXT,Xt.ZERO_TO_ONE_EXT):Xt.clipControlEXT(Xt.LOWER_LEFT_EXT,Xt.NEGATIVE_ONE_TO_ONE_EXT),rt=bt;let Qt=yt;yt=null,this.setClear(Qt)}},getReversed:function(){return rt},setTest:function(bt){bt?mt(i.DEPTH_TEST):Ft(i.DEPTH_TEST)},setMask:function(bt){nt!==bt&&!U&&(i.depthMask(bt),nt=bt)},setFunc:function(bt){if(rt&&(bt=Nm[bt]),Et!==bt){switch(bt){case _l:i.depthFunc(i.NEVER);break;case xl:i.depthFunc(i.ALWAYS);break;case yl:i.depthFunc(i.LESS);break;case Xr:i.depthFunc(i.LEQUAL);break;case vl:i.depthFunc(i.EQUAL);break;case Ml:i.depthFunc(i.GEQUAL);break;case Sl:i.depthFunc(i.GREATER);break;case bl:i.depthFunc(i.NOTEQUAL);break;default:i.depthFunc(i.LEQUAL)}Et=bt}},setLocked:function(bt){U=bt},setClear:function(bt){yt!==bt&&(yt=bt,rt&&(bt=1-bt),i.clearDepth(bt))},reset:function(){U=!1,nt=null,Et=null,yt=null,rt=!1}}}function s(){let U=!1,rt=null,nt=null,Et=null,yt=null,bt=null,Xt=null,Qt=null,ht=null;return{setTest:function(kt){U||(kt?mt(i.STENCIL_TEST):Ft(i.STENCIL_TEST))},setMask:function(kt){rt!==kt&&!U&&(i.stencilMask(kt),rt=kt)},setFunc:function(kt,te,Rt){(nt!==kt||Et!==te||yt!==Rt)&&(i.stencilFunc(kt,te,Rt),nt=kt,Et=te,yt=Rt)},setOp:function(kt,te,Rt){(bt!==kt||Xt!==te||Qt!==Rt)&&(i.stencilOp(kt,te,Rt),bt=kt,Xt=te,Qt=Rt)},setLocked:function(kt){U=kt},setClear:function(kt){ht!==kt&&(i.clearStencil(kt),ht=kt)},reset:function(){U=!1,rt=null,nt=null,Et=null,yt=null,bt=null,Xt=null,Qt=null,ht=null}}}let r=new e,o=new n,a=new s,c={},l=new WeakMap,u={},h={},d={},f=new WeakMap,g=[],v=null,p=!1,m=null,y=null,A=null,M=null,R=null,E=null,_=null,T=new ae(0,0,0),O=0,N=!1,I=null,V=null,G=null,D=null,H=null,Y=i.getParameter(i.MAX_COMBINED_TEXTURE_IMAGE_UNITS),B=!1,lt=0,Z=i.getParameter(i.VERSION);Z.indexOf("WebGL")!==-1?(lt=parseFloat(/^WebGL (\d)/.exec(Z)[1]),B=lt>=1):Z.indexOf("OpenGL ES")!==-1&&(lt=parseFloat(/^OpenGL ES (\d)/.exec(Z)[1]),B=lt>=2);let K=null,tt={},ut=i.getParameter(i.SCISSOR_BOX),ct=i.getParameter(i.VIEWPORT),j=new $e().fromArray(ut),gt=new $e().fromArray(ct);function it(U,rt,nt,Et){let yt=new Uint8Array(4),bt=i.createTexture();i.bindTexture(U,bt),i.texParameteri(U,i.TEXTURE_MIN_FILTER,i.NEAREST),i.texParameteri(U,i.TEXTURE_MAG_FILTER,i.NEAREST);for(let Xt=0;Xt<nt;Xt++)U===i.TEXTURE_3D||U===i.TEXTURE_2D_ARRAY?i.texImage3D(rt,0,i.RGBA,1,1,Et,0,i.RGBA,i.UNSIGNED_BYTE,yt):i.texImage2D(rt+Xt,0,i.RGBA,1,1,0,i.RGBA,i.UNSIGNED_BYTE,yt);return bt}let pt={};pt[i.TEXTURE_2D]=it(i.TEXTURE_2D,i.TEXTURE_2D,1),pt[i.TEXTURE_CUBE_MAP]=it(i.TEXTURE_CUBE_MAP,i.TEXTURE_CUBE_MAP_POSITIVE_X,6),pt[i.TEXTURE_2D_ARRAY]=it(i.TEXTURE_2D_ARRAY,i.TEXTURE_2D_ARRAY,1,1),pt[i.TEXTURE_3D]=it(i.TEXTURE_3D,i.TEXTURE_3D,1,1),r.setClear(0,0,0,1),o.setClear(1),a.setClear(0),mt(i.DEPTH_TEST),o.setFunc(Xr),qe(!1),De(yu),mt(i.CULL_FACE),Ce(ir);function mt(U){u[U]!==!0&&(i.enable(U),u[U]=!0)}function Ft(U){u[U]!==!1&&(i.disable(U),u[U]=!1)}function Wt(U,rt){return d[U]!==rt?(i.bindFramebuffer(U,rt),d[U]=rt,U===i.DRAW_FRAMEBUFFER&&(d[i.FRAMEBUFFER]=rt),U===i.FRAMEBUFFER&&(d[i.DRAW_FRAMEBUFFER]=rt),!0):!1}function Vt(U,rt){let nt=g,Et=!1;if(U){nt=f.get(rt),nt===void 0&&(nt=[],f.set(rt,nt));let yt=U.textures;if(nt.length!==yt.length||nt[0]!==i.COLOR_ATTACHMENT0){for(let bt=0,Xt=yt.length;bt<Xt;bt++)nt[bt]=i.COLOR_ATTACHMENT0+bt;nt.length=yt.length,Et=!0}}else nt[0]!==i.BACK&&(nt[0]=i.BACK,Et=!0);Et&&i.drawBuffers(nt)}function le(U){return v!==U?(i.useProgram(U),v=U,!0):!1}let ce={[sr]:i.FUNC_ADD,[nm]:i.FUNC_SUBTRACT,[im]:i.FUNC_REVERSE_SUBTRACT};ce[sm]=i.MIN,ce[rm]=i.MAX;let Kt={[om]:i.ZERO,[am]:i.ONE,[lm]:i.SRC_COLOR,[bu]:i.SRC_ALPHA,[pm]:i.SRC_ALPHA_SATURATE,[dm]:i.DST_COLOR,[hm]:i.DST_ALPHA,[cm]:i.ONE_MINUS_SRC_COLOR,[wu]:i.ONE_MINUS_SRC_ALPHA,[fm]:i.ONE_MINUS_DST_COLOR,[um]:i.ONE_MINUS_DST_ALPHA,[mm]:i.CONSTANT_COLOR,[gm]:i.ONE_MINUS_CONSTANT_COLOR,[_m]:i.CONSTANT_ALPHA,[xm]:i.ONE_MINUS_CONSTANT_ALPHA};function Ce(U,rt,nt,Et,yt,bt,Xt,Qt,ht,kt){if(U===ir){p===!0&&(Ft(i.BLEND),p=!1);return}if(p===!1&&(mt(i.BLEND),p=!0),U!==em){if(U!==m||kt!==N){if((y!==sr||R!==sr)&&(i.blendEquation(i.FUNC_ADD),y=sr,R=sr),kt)switch(U){case no:i.blendFuncSeparate(i.ONE,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case vu:i.blendFunc(i.ONE,i.ONE);break;case Mu:i.blendFuncSeparate(i.ZERO,i.ONE_MINUS_SRC_COLOR,i.ZERO,i.ONE);break;case Su:i.blendFuncSeparate(i.DST_COLOR,i.ONE_MINUS_SRC_ALPHA,i.ZERO,i.ONE);break;default:ne("WebGLState: Invalid blending: ",U);break}else switch(U){case no:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,i.ONE,i.ONE_MINUS_SRC_ALPHA);break;case vu:i.blendFuncSeparate(i.SRC_ALPHA,i.ONE,i.ONE,i.ONE);break;case Mu:ne("WebGLState: SubtractiveBlending requires material.premultipliedAlpha = true");break;case Su:ne("WebGLState: MultiplyBlending requires material.premultipliedAlpha = true");break;default:ne("WebGLState: Invalid blending: ",U);break}A=null,M=null,E=null,_=null,T.set(0,0,0),O=0,m=U,N=kt}return}yt=yt||rt,bt=bt||nt,Xt=Xt||Et,(rt!==y||yt!==R)&&(i.blendEquationSeparate(ce[rt],ce[yt]),y=rt,R=yt),(nt!==A||Et!==M||bt!==E||Xt!==_)&&(i.blendFuncSeparate(Kt[nt],Kt[Et],Kt[bt],Kt[Xt]),A=nt,M=Et,E=bt,_=Xt),(Qt.equals(T)===!1||ht!==O)&&(i.blendColor(Qt.r,Qt.g,Qt.b,ht),T.copy(Qt),O=ht),m=U,N=!1}function Te(U,rt){U.side===$n?Ft(i.CULL_FACE):mt(i.CULL_FACE);let nt=U.side===In;rt&&(nt=!nt),qe(nt),U.blending===no&&U.transparent===!1?Ce(ir):Ce(U.blending,U.blendEquation,U.blendSrc,U.blendDst,U.blendEquationAlpha,U.blendSrcAlpha,U.blendDstAlpha,U.blendColor,U.blendAlpha,U.premultipliedAlpha),o.setFunc(U.depthFunc),o.setTest(U.depthTest),o.setMask(U.depthWrite),r.setMask(U.colorWrite);let Et=U.stencilWrite;a.setTest(Et),Et&&(a.setMask(U.stencilWriteMask),a.setFunc(U.stencilFunc,U.stencilRef,U.stencilFuncMask),a.setOp(U.stencilFail,U.stencilZFail,U.stencilZPass)),ve(U.polygonOffset,U.polygonOffsetFactor,U.polygonOffsetUnits),U.alphaToCoverage===!0?mt(i.SAMPLE_ALPHA_TO_COVERAGE):Ft(i.SAMPLE_ALPHA_TO_COVERAGE)}function qe(U){I!==U&&(U?i.frontFace(i.CW):i.frontFace(i.CCW),I=U)}function De(U){U!==jp?(mt(i.CULL_FACE),U!==V&&(U===yu?i.cullFace(i.BACK):U===Qp?i.cullFace(i.FRONT):i.cullFace(i.FRONT_AND_BACK))):Ft(i.CULL_FACE),V=U}function vn(U){U!==G&&(B&&i.lineWidth(U),G=U)}function ve(U,rt,nt){U?(mt(i.POLYGON_OFFSET_FILL),(D!==rt||H!==nt)&&(D=rt,H=nt,o.getReversed()&&(rt=-rt,nt=-nt),i.polygonOffset(rt,nt))):Ft(i.POLYGON_OFFSET_FILL)}function fn(U){U?mt(i.SCISSOR_TEST):Ft(i.SCISSOR_TEST)}function Je(U){U===void 0&&(U=i.TEXTURE0+Y-1),K!==U&&(i.activeTexture(U),K=U)}function sn(U,rt,nt){nt===void 0&&(K===null?nt=i.TEXTURE0+Y-1:nt=K);let Et=tt[nt];Et===void 0&&(Et={type:void 0,texture:void 0},tt[nt]=Et),(Et.type!==U||Et.texture!==rt)&&(K!==nt&&(i.activeTexture(nt),K=nt),i.bindTexture(U,rt||pt[U]),Et.type=U,Et.texture=rt)}function F(){let U=tt[K];U!==void 0&&U.type!==void 0&&(i.bindTexture(U.type,null),U.type=void 0,U.texture=void 0)}function Ct(){try{i.compressedTexImage2D(...arguments)}catch(U){ne("WebGLState:",U)}}function Jt(){try{i.compressedTexImage3D(...arguments)}catch(U){ne("WebGLState:",U)}}function oe(){try{i.texSubImage2D(...arguments)}catch(U){ne("WebGLState:",U)}}function wt(){try{i.texSubImage3D(...arguments)}catch(U){ne("WebGLState:",U)}}function Ue(){try{i.compressedTexSubImage2D(...arguments)}catch(U){ne("WebGLState:",U)}}function Ht(){try{i.compressedTexSubImage3D(...arguments)}catch(U){ne("WebGLState:",U)}}function Yt(){try{i.texStorage2D(...arguments)}catch(U){ne("WebGLState:",U)}}function C(){try{i.texStorage3D(...arguments)}catch(U){ne("WebGLState:",U)}}function S(){try{i.texImage2D(...arguments)}catch(U){ne("WebGLState:",U)}}function X(){try{i.texImage3D(...arguments)}catch(U){ne("WebGLState:",U)}}function dt(U){return h[U]!==void 0?h[U]:i.getParameter(U)}function ot(U,rt){h[U]!==rt&&(i.pixelStorei(U,rt),h[U]=rt)}function vt(U){j.equals(U)===!1&&(i.scissor(U.x,U.y,U.z,U.w),j.copy(U))}function Mt(U){gt.equals(U)===!1&&(i.viewport(U.x,U.y,U.z,U.w),gt.copy(U))}function et(U,rt){let nt=l.get(rt);nt===void 0&&(nt=new WeakMap,l.set(rt,nt));let Et=nt.get(U);Et===void 0&&(Et=i.getUniformBlockIndex(rt,U.name),i.uniformBlockBinding(rt,Et,Et),nt.set(U,Et))}function st(U,rt,nt){let yt=l.get(rt).get(U);c[yt]!==nt&&(i.bindBufferBase(i.UNIFORM_BUFFER,yt,nt),c[yt]=nt)}function xt(){i.disable(i.BLEND),i.disable(i.CULL_FACE),i.disable(i.DEPTH_TEST),i.disable(i.POLYGON_OFFSET_FILL),i.disable(i.SCISSOR_TEST),i.disable(i.STENCIL_TEST),i.disable(i.SAMPLE_ALPHA_TO_COVERAGE),i.blendEquation(i.FUNC_ADD),i.blendFunc(i.ONE,i.ZERO),i.blendFuncSeparate(i.ONE,i.ZERO,i.ONE,i.ZERO),i.blendColor(0,0,0,0),i.colorMask(!0,!0,!0,!0),i.clearColor(0,0,0,0),i.depthMask(!0),i.depthFunc(i.LESS),o.setReversed(!1),i.clearDepth(1),i.stencilMask(4294967295),i.stencilFunc(i.ALWAYS,0,4294967295),i.stencilOp(i.KEEP,i.KEEP,i.KEEP),i.clearStencil(0),i.cullFace(i.BACK),i.frontFace(i.CCW),i.polygonOffset(0,0),i.activeTexture(i.TEXTURE0),i.bindFramebuffer(i.FRAMEBUFFER,null),i.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),i.bindFramebuffer(i.READ_FRAMEBUFFER,null),i.useProgram(null),i.lineWidth(1),i.scissor(0,0,i.canvas.width,i.canvas.height),i.viewport(0,0,i.canvas.width,i.canvas.height),i.pixelStorei(i.PACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_ALIGNMENT,4),i.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,!1),i.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,!1),i.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,i.BROWSER_DEFAULT_WEBGL),i.pixelStorei(i.PACK_ROW_LENGTH,0),i.pixelStorei(i.PACK_SKIP_PIXELS,0),i.pixelStorei(i.PACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_ROW_LENGTH,0),i.pixelStorei(i.UNPACK_IMAGE_HEIGHT,0),i.pixelStorei(i.UNPACK_SKIP_PIXELS,0),i.pixelStorei(i.UNPACK_SKIP_ROWS,0),i.pixelStorei(i.UNPACK_SKIP_IMAGES,0),u={},h={},K=null,tt={},d={},c={},f=new WeakMap,g=[],v=null,p=!1,m=null,y=null,A=null,M=null,R=null,E=null,_=null,T=new ae(0,0,0),O=0,N=!1,I=null,V=null,G=null,D=null,H=null,j.set(0,0,i.canvas.width,i.canvas.height),gt.set(0,0,i.canvas.width,i.canvas.height),r.reset(),o.reset(),a.reset()}return{buffers:{color:r,depth:o,stencil:a},enable:mt,disable:Ft,bindFramebuffer:Wt,drawBuffers:Vt,useProgram:le,setBlending:Ce,setMaterial:Te,setFlipSided:qe,setCullFace:De,setLineWidth:vn,setPolygonOffset:ve,setScissorTest:fn,activeTexture:Je,bindTexture:sn,unbindTexture:F,compressedTexImage2D:Ct,compressedTexImage3D:Jt,texImage2D:S,texImage3D:X,pixelStorei:ot,getParameter:dt,updateUBOMapping:et,uniformBlockBinding:st,texStorage2D:Yt,texStorage3D:C,texSubImage2D:oe,texSubImage3D:wt,compressedTexSubImage2D:Ue,compressedTexSubImage3D:Ht,scissor:vt,viewport:Mt,reset:xt}}function Rb(i,t,e,n,s,r,o){let a=t.has("WEBGL_multisampled_render_to_texture")?t.get("WEBGL_multisampled_render_to_texture"):null,c=typeof navigator>"u"?!1:/OculusBrowser/g.test(navigator.userAgent),l=new ie,u=new WeakMap,h=new Set,d,f=new WeakMap,g=new Set,v=new FinalizationRegistry(C=>g.delete(C)),p=!1;try{p=typeof OffscreenCanvas<"u"&&new OffscreenCanvas(1,1).getContext("2d")!==null}catch{}function m(C,S){return p?new OffscreenCanvas(C,S):Bo("canvas")}function y(C,S,X){let dt=1,ot=Yt(C);if((ot.width>X||ot.height>X)&&(dt=X/Math.max(ot.width,ot.height)),dt<1)if(typeof HTMLImageElement<"u"&&C instanceof HTMLImageElement||typeof HTMLCanvasElement<"u"&&C instanceof HTMLCanvasElement||typeof ImageBitmap<"u"&&C instanceof ImageBitmap||typeof VideoFrame<"u"&&C instanceof VideoFrame){let vt=Math.floor(dt*ot.width),Mt=Math.floor(dt*ot.height);d===void 0&&(d=m(vt,Mt));let et=S?m(vt,Mt):d;return et.width=vt,et.height=Mt,et.getContext("2d").drawImage(C,0,0,vt,Mt),Zt("WebGLRenderer: Texture has been resized from ("+ot.width+"x"+ot.height+") to ("+vt+"x"+Mt+")."),et}else return"data"in C&&Zt("WebGLRenderer: Image in DataTexture is too big ("+ot.width+"x"+ot.height+")."),C;return C}function A(C){return C.generateMipmaps}function M(C){i.generateMipmap(C)}function R(C){return C.isWebGLCubeRenderTarget?i.TEXTURE_CUBE_MAP:C.isWebGL3DRenderTarget?i.TEXTURE_3D:C.isWebGLArrayRenderTarget||C.isCompressedArrayTexture?i.TEXTURE_2D_ARRAY:i.TEXTURE_2D}function E(C,S,X,dt,ot,vt=!1){if(C!==null){if(i[C]!==void 0)return i[C];Zt("WebGLRenderer: Attempt to use non-existing WebGL internal format '"+C+"'")}let Mt;dt&&(Mt=t.get("EXT_texture_norm16"),Mt||Zt("WebGLRenderer: Unable to use normalized textures without EXT_texture_norm16 extension"));let et=S;if(S===i.RED&&(X===i.FLOAT&&(et=i.R32F),X===i.HALF_FLOAT&&(et=i.R16F),X===i.UNSIGNED_BYTE&&(et=i.R8),X===i.UNSIGNED_SHORT&&Mt&&(et=Mt.R16_EXT),X===i.SHORT&&Mt&&(et=Mt.R16_SNORM_EXT)),S===i.RED_INTEGER&&(X===i.UNSIGNED_BYTE&&(et=i.R8UI),X===i.UNSIGNED_SHORT&&(et=i.R16UI),X===i.UNSIGNED_INT&&(et=i.R32UI),X===i.BYTE&&(et=i.R8I),X===i.SHORT&&(et=i.R16I),X===i.INT&&(et=i.R32I)),S===i.RG&&(X===i.FLOAT&&(et=i.RG32F),X===i.HALF_FLOAT&&(et=i.RG16F),X===i.UNSIGNED_BYTE&&(et=i.RG8),X===i.UNSIGNED_SHORT&&Mt&&(et=Mt.RG16_EXT),X===i.SHORT&&Mt&&(et=Mt.RG16_SNORM_EXT)),S===i.RG_INTEGER&&(X===i.UNSIGNED_BYTE&&(et=i.RG8UI),X===i.UNSIGNED_SHORT&&(et=i.RG16UI),X===i.UNSIGNED_INT&&(et=i.RG32UI),X===i.BYTE&&(et=i.RG8I),X===i.SHORT&&(et=i.RG16I),X===i.INT&&(et=i.RG32I)),S===i.RGB_INTEGER&&(X===i.UNSIGNED_BYTE&&(et=i.RGB8UI),X===i.UNSIGNED_SHORT&&(et=i.RGB16UI),X===i.UNSIGNED_INT&&(et=i.RGB32UI),X===i.BYTE&&(et=i.RGB8I),X===i.SHORT&&(et=i.RGB16I),X===i.INT&&(et=i.RGB32I)),S===i.RGBA_INTEGER&&(X===i.UNSIGNED_BYTE&&(et=i.RGBA8UI),X===i.UNSIGNED_SHORT&&(et=i.RGBA16UI),X===i.UNSIGNED_INT&&(et=i.RGBA32UI),X===i.BYTE&&(et=i.RGBA8I),X===i.SHORT&&(et=i.RGBA16I),X===i.INT&&(et=i.RGBA32I)),S===i.RGB&&(X===i.UNSIGNED_SHORT&&Mt&&(et=Mt.RGB16_EXT),X===i.SHORT&&Mt&&(et=Mt.RGB16_SNORM_EXT),X===i.UNSIGNED_INT_5_9_9_9_REV&&(et=i.RGB9_E5),X===i.UNSIGNED_INT_10F_11F_11F_REV&&(et=i.R11F_G11F_B10F)),S===i.RGBA){let st=vt?Oo:ye.getTransfer(ot);X===i.FLOAT&&(et=i.RGBA32F),X===i.HALF_FLOAT&&(et=i.RGBA16F),X===i.UNSIGNED_BYTE&&(et=st===Re?i.SRGB8_ALPHA8:i.RGBA8),X===i.UNSIGNED_SHORT&&Mt&&(et=Mt.RGBA16_EXT),X===i.SHORT&&Mt&&(et=Mt.RGBA16_SNORM_EXT),X===i.UNSIGNED_SHORT_4_4_4_4&&(et=i.RGBA4),X===i.UNSIGNED_SHORT_5_5_5_1&&(et=i.RGB5_A1)}return(et===i.R16F||et===i.R32F||et===i.RG16F||et===i.RG32F||et===i.RGBA16F||et===i.RGBA32F)&&t.get("EXT_color_buffer_float"),et}function _(C,S){let X;return C?S===null||S===Ci||S===or?X=i.DEPTH24_STENCIL8:S===Pi?X=i.DEPTH32F_STENCIL8:S===so&&(X=i.DEPTH24_STENCIL8,Zt("DepthTexture: 16 bit depth attachment is not supported with stencil. Using 24-bit attachment.")):S===null||S===Ci||S===or?X=i.DEPTH_COMPONENT24:S===Pi?X=i.DEPTH_COMPONENT32F:S===so&&(X=i.DEPTH_COMPONENT16),X}function T(C,S){return A(C)===!0||C.isFramebufferTexture&&C.minFilter!==An&&C.minFilter!==Yn?Math.log2(Math.max(S.width,S.height))+1:C.mipmaps.length>0?C.mipmaps.length:C.isCompressedTexture&&Array.isArray(C.image)?S.mipmaps.length:1}function O(C){let S=new WeakRef(C);n.get(C).__ref=S,g.add(S),v.register(C,S,S)}function N(C){let S=n.get(C).__ref;S!==void 0&&(g.delete(S),v.unregister(S))}function I(C){G(C.target)}function V(C){D(C.target)}function G(C){C.removeEventListener("dispose",I),N(C),Y(C),C.isVideoTexture&&u.delete(C),C.isHTMLTexture&&h.delete(C)}function D(C){C.removeEventListener("dispose",V),N(C),lt(C)}function H(){for(let C of g){let S=C.deref();S!==void 0&&(S.isRenderTarget===!0?D(S):G(S))}g.clear(),h.clear()}function Y(C){let S=n.get(C);if(S.__webglInit===void 0)return;let X=C.source,dt=f.get(X);if(dt){let ot=dt[S.__cacheKey];ot.usedTimes--,ot.usedTimes===0&&B(C),Object.keys(dt).length===0&&f.delete(X)}n.remove(C)}function B(C){let S=n.get(C);i.deleteTexture(S.__webglTexture);let X=C.source,dt=f.get(X);delete dt[S.__cacheKey],o.memory.textures--}function lt(C){let S=n.get(C);S.__depthDisposeCallback&&S.__depthDisposeCallback();let X=C.depthTexture;if(X&&X.renderTarget===C&&G(X),C.isWebGLCubeRenderTarget)for(let ot=0;ot<6;ot++){if(Array.isArray(S.__webglFramebuffer[ot]))for(let vt=0;vt<S.__webglFramebuffer[ot].length;vt++)i.deleteFramebuffer(S.__webglFramebuffer[ot][vt]);else i.deleteFramebuffer(S.__webglFramebuffer[ot]);S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer[ot])}else{if(Array.isArray(S.__webglFramebuffer))for(let ot=0;ot<S.__webglFramebuffer.length;ot++)i.deleteFramebuffer(S.__webglFramebuffer[ot]);else i.deleteFramebuffer(S.__webglFramebuffer);if(S.__webglDepthbuffer&&i.deleteRenderbuffer(S.__webglDepthbuffer),S.__webglMultisampledFramebuffer&&i.deleteFramebuffer(S.__webglMultisampledFramebuffer),S.__webglColorRenderbuffer)for(let ot=0;ot<S.__webglColorRenderbuffer.length;ot++)S.__webglColorRenderbuffer[ot]&&i.deleteRenderbuffer(S.__webglColorRenderbuffer[ot]);S.__webglDepthRenderbuffer&&i.deleteRenderbuffer(S.__webglDepthRenderbuffer)}let dt=C.textures;for(let ot=0,vt=dt.length;ot<vt;ot++){let Mt=n.get(dt[ot]);Mt.__webglTexture&&(i.deleteTexture(Mt.__webglTexture),o.memory.textures--),n.remove(dt[ot])}n.remove(C)}let Z=0;function K(){Z=0}function tt(){return Z}function ut(C){Z=C}function ct(){let C=Z;return C>=s.maxTextures&&Zt("WebGLTextures: Trying to use "+(C+1)+" texture units while this GPU supports only "+s.maxTextures),Z+=1,C}function j(C){let S=[];return S.push(C.wrapS),S.push(C.wrapT),S.push(C.wrapR||0),S.push(C.magFilter),S.push(C.minFilter),S.push(C.anisotropy),S.push(C.internalFormat),S.push(C.format),S.push(C.type),S.push(C.generateMipmaps),S.push(C.mipmapsAutoUpdate),S.push(C.premultiplyAlpha),S.push(C.flipY),S.push(C.unpackAlignment),S.push(C.colorSpace),S.join()}function gt(C,S){let X=n.get(C);if(C.isVideoTexture&&Ue(C),C.isRenderTargetTexture===!1&&C.isExternalTexture!==!0&&C.version>0&&X.__version!==C.version){let dt=C.image;if(dt===null)Zt("WebGLRenderer: Texture marked for update but no image data found.");else if(dt.complete===!1)Zt("WebGLRenderer: Texture marked for update but image is incomplete");else{Te(X,C,S);return}}else C.isExternalTexture&&(X.__webglTexture=C.sourceTexture?C.sourceTexture:null);e.bindTexture(i.TEXTURE_2D,X.__webglTexture,i.TEXTURE0+S)}function it(C,S){let X=n.get(C);if(C.isRenderTargetTexture===!1&&C.version>0&&X.__version!==C.version){Te(X,C,S);return}else C.isExternalTexture&&(X.__webglTexture=C.sourceTexture?C.sourceTexture:null);e.bindTexture(i.TEXTURE_2D_ARRAY,X.__webglTexture,i.TEXTURE0+S)}function pt(C,S){let X=n.get(C);if(C.isRenderTargetTexture===!1&&C.version>0&&X.__version!==C.version){Te(X,C,S);return}e.bindTexture(i.TEXTURE_3D,X.__webglTexture,i.TEXTURE0+S)}function mt(C,S){let X=n.get(C);if(C.version>0&&X.__version!==C.version){qe(X,C,S);return}e.bindTexture(i.TEXTURE_CUBE_MAP,X.__webglTexture,i.TEXTURE0+S)}let Ft={[wl]:i.REPEAT,[Hi]:i.CLAMP_TO_EDGE,[El]:i.MIRRORED_REPEAT},Wt={[An]:i.NEAREST,[Mm]:i.NEAREST_MIPMAP_NEAREST,[ra]:i.NEAREST_MIPMAP_LINEAR,[Yn]:i.LINEAR,[jl]:i.LINEAR_MIPMAP_NEAREST,[ds]:i.LINEAR_MIPMAP_LINEAR},Vt={[Em]:i.NEVER,[Gu]:i.ALWAYS,[Tm]:i.LESS,[zu]:i.LEQUAL,[Am]:i.EQUAL,[Vu]:i.GEQUAL,[Rm]:i.GREATER,[Cm]:i.NOTEQUAL};function le(C,S){if(S.type===Pi&&t.has("OES_texture_float_linear")===!1&&(S.magFilter===Yn||S.magFilter===jl||S.magFilter===ra||S.magFilter===ds||S.minFilter===Yn||S.minFilter===jl||S.minFilter===ra||S.minFilter===ds)&&Zt("WebGLRenderer: Unable to use linear filtering with floating point textures. OES_texture_float_linear not supported on this device."),i.texParameteri(C,i.TEXTURE_WRAP_S,Ft[S.wrapS]),i.texParameteri(C,i.TEXTURE_WRAP_T,Ft[S.wrapT]),(C===i.TEXTURE_3D||C===i.TEXTURE_2D_ARRAY)&&i.texParameteri(C,i.TEXTURE_WRAP_R,Ft[S.wrapR]),i.texParameteri(C,i.TEXTURE_MAG_FILTER,Wt[S.magFilter]),i.texParameteri(C,i.TEXTURE_MIN_FILTER,Wt[S.minFilter]),S.compareFunction&&(i.texParameteri(C,i.TEXTURE_COMPARE_MODE,i.COMPARE_REF_TO_TEXTURE),i.texParameteri(C,i.TEXTURE_COMPARE_FUNC,Vt[S.compareFunction])),t.has("EXT_texture_filter_anisotropic")===!0){if(S.magFilter===An||S.minFilter!==ra&&S.minFilter!==ds||S.type===Pi&&t.has("OES_texture_float_linear")===!1)return;if(S.anisotropy>1||n.get(S).__currentAnisotropy){let X=t.get("EXT_texture_filter_anisotropic");i.texParameterf(C,X.TEXTURE_MAX_ANISOTROPY_EXT,Math.min(S.anisotropy,s.getMaxAnisotropy())),n.get(S).__currentAnisotropy=S.anisotropy}}}function ce(C,S){let X=!1;C.__webglInit===void 0&&(C.__webglInit=!0,S.addEventListener("dispose",I),O(S));let dt=S.source,ot=f.get(dt);ot===void 0&&(ot={},f.set(dt,ot));let vt=j(S);if(vt!==C.__cacheKey){ot[vt]===void 0&&(ot[vt]={texture:i.createTexture(),usedTimes:0},o.memory.textures++,X=!0),ot[vt].usedTimes++;let Mt=ot[C.__cacheKey];Mt!==void 0&&(ot[C.__cacheKey].usedTimes--,Mt.usedTimes===0&&B(S)),C.__cacheKey=vt,C.__webglTexture=ot[vt].texture}return X}function Kt(C,S,X){return Math.floor(Math.floor(C/X)/S)}function Ce(C,S,X,dt){let vt=C.updateRanges;if(vt.length===0)e.texSubImage2D(i.TEXTURE_2D,0,0,0,S.width,S.height,X,dt,S.data);else{vt.sort((U,rt)=>U.start-rt.start);let Mt=0;for(let U=1;U<vt.length;U++){let rt=vt[Mt],nt=vt[U],Et=rt.start+rt.count,yt=Kt(nt.start,S.width,4),bt=Kt(rt.start,S.width,4);nt.start<=Et+1&&yt===bt&&Kt(nt.start+nt.count-1,S.width,4)===yt?rt.count=Math.max(rt.count,nt.start+nt.count-rt.start):(++Mt,vt[Mt]=nt)}vt.length=Mt+1;let et=e.getParameter(i.UNPACK_ROW_LENGTH),st=e.getParameter(i.UNPACK_SKIP_PIXELS),xt=e.getParameter(i.UNPACK_SKIP_ROWS);e.pixelStorei(i.UNPACK_ROW_LENGTH,S.width);for(let U=0,rt=vt.length;U<rt;U++){let nt=vt[U],Et=Math.floor(nt.start/4),yt=Math.ceil(nt.count/4),bt=Et%S.width,Xt=Math.floor(Et/S.width),Qt=yt,ht=1;e.pixelStorei(i.UNPACK_SKIP_PIXELS,bt),e.pixelStorei(i.UNPACK_SKIP_ROWS,Xt),e.texSubImage2D(i.TEXTURE_2D,0,bt,Xt,Qt,ht,X,dt,S.data)}C.clearUpdateRanges(),e.pixelStorei(i.UNPACK_ROW_LENGTH,et),e.pixelStorei(i.UNPACK_SKIP_PIXELS,st),e.pixelStorei(i.UNPACK_SKIP_ROWS,xt)}}function Te(C,S,X){let dt=i.TEXTURE_2D;(S.isDataArrayTexture||S.isCompressedArrayTexture)&&(dt=i.TEXTURE_2D_ARRAY),S.isData3DTexture&&(dt=i.TEXTURE_3D);let ot=ce(C,S),vt=S.source;e.bindTexture(dt,C.__webglTexture,i.TEXTURE0+X);let Mt=n.get(vt);if(vt.version!==Mt.__version||ot===!0){if(e.activeTexture(i.TEXTURE0+X),(typeof ImageBitmap<"u"&&S.image instanceof ImageBitmap)===!1){let ht=ye.getPrimaries(ye.workingColorSpace),kt=S.colorSpace===ps?null:ye.getPrimaries(S.colorSpace),te=S.colorSpace===ps||ht===kt?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,te)}e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment);let st=y(S.image,!1,s.maxTextureSize);st=Ht(S,st);let xt=r.convert(S.format,S.colorSpace),U=r.convert(S.type),rt=E(S.internalFormat,xt,U,S.normalized,S.colorSpace,S.isVideoTexture);le(dt,S);let nt,Et=S.mipmaps,yt=S.isVideoTexture!==!0,bt=Mt.__version===void 0||ot===!0,Xt=vt.dataReady,Qt=T(S,st);if(S.isDepthTexture)rt=_(S.format===fs,S.type),bt&&(yt?e.texStorage2D(i.TEXTURE_2D,1,rt,st.width,st.height):e.texImage2D(i.TEXTURE_2D,0,rt,st.width,st.height,0,xt,U,null));else if(S.isDataTexture)if(Et.length>0){yt&&bt&&e.texStorage2D(i.TEXTURE_2D,Qt,rt,Et[0].width,Et[0].height);for(let ht=0,kt=Et.length;ht<kt;ht++)nt=Et[ht],yt?Xt&&e.texSubImage2D(i.TEXTURE_2D,ht,0,0,nt.width,nt.height,xt,U,nt.data):e.texImage2D(i.TEXTURE_2D,ht,rt,nt.width,nt.height,0,xt,U,nt.data);S.generateMipmaps=!1}else yt?(bt&&e.texStorage2D(i.TEXTURE_2D,Qt,rt,st.width,st.height),Xt&&Ce(S,st,xt,U)):e.texImage2D(i.TEXTURE_2D,0,rt,st.width,st.height,0,xt,U,st.data);else if(S.isCompressedTexture)if(S.isCompressedArrayTexture){yt&&bt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,rt,Et[0].width,Et[0].height,st.depth);for(let ht=0,kt=Et.length;ht<kt;ht++)if(nt=Et[ht],S.format!==Li)if(xt!==null)if(yt){if(Xt)if(S.layerUpdates.size>0){let te=ju(nt.width,nt.height,S.format,S.type);for(let Rt of S.layerUpdates){let he=nt.data.subarray(Rt*te/nt.data.BYTES_PER_ELEMENT,(Rt+1)*te/nt.data.BYTES_PER_ELEMENT);e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ht,0,0,Rt,nt.width,nt.height,1,xt,he)}}else e.compressedTexSubImage3D(i.TEXTURE_2D_ARRAY,ht,0,0,0,nt.width,nt.height,st.depth,xt,nt.data)}else e.compressedTexImage3D(i.TEXTURE_2D_ARRAY,ht,rt,nt.width,nt.height,st.depth,0,nt.data,0,0);else Zt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()");else yt?Xt&&e.texSubImage3D(i.TEXTURE_2D_ARRAY,ht,0,0,0,nt.width,nt.height,st.depth,xt,U,nt.data):e.texImage3D(i.TEXTURE_2D_ARRAY,ht,rt,nt.width,nt.height,st.depth,0,xt,U,nt.data);S.layerUpdates.size>0&&S.clearLayerUpdates()}else{yt&&bt&&e.texStorage2D(i.TEXTURE_2D,Qt,rt,Et[0].width,Et[0].height);for(let ht=0,kt=Et.length;ht<kt;ht++)nt=Et[ht],S.format!==Li?xt!==null?yt?Xt&&e.compressedTexSubImage2D(i.TEXTURE_2D,ht,0,0,nt.width,nt.height,xt,nt.data):e.compressedTexImage2D(i.TEXTURE_2D,ht,rt,nt.width,nt.height,0,nt.data):Zt("WebGLRenderer: Attempt to load unsupported compressed texture format in .uploadTexture()"):yt?Xt&&e.texSubImage2D(i.TEXTURE_2D,ht,0,0,nt.width,nt.height,xt,U,nt.data):e.texImage2D(i.TEXTURE_2D,ht,rt,nt.width,nt.height,0,xt,U,nt.data)}else if(S.isDataArrayTexture)if(yt){if(bt&&e.texStorage3D(i.TEXTURE_2D_ARRAY,Qt,rt,st.width,st.height,st.depth),Xt)if(S.layerUpdates.size>0){let ht=ju(st.width,st.height,S.format,S.type);for(let kt of S.layerUpdates){let te=st.data.subarray(kt*ht/st.data.BYTES_PER_ELEMENT,(kt+1)*ht/st.data.BYTES_PER_ELEMENT);e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,kt,st.width,st.height,1,xt,U,te)}S.clearLayerUpdates()}else e.texSubImage3D(i.TEXTURE_2D_ARRAY,0,0,0,0,st.width,st.height,st.depth,xt,U,st.data)}else e.texImage3D(i.TEXTURE_2D_ARRAY,0,rt,st.width,st.height,st.depth,0,xt,U,st.data);else if(S.isData3DTexture)yt?(bt&&e.texStorage3D(i.TEXTURE_3D,Qt,rt,st.width,st.height,st.depth),Xt&&e.texSubImage3D(i.TEXTURE_3D,0,0,0,0,st.width,st.height,st.depth,xt,U,st.data)):e.texImage3D(i.TEXTURE_3D,0,rt,st.width,st.height,st.depth,0,xt,U,st.data);else if(S.isFramebufferTexture){if(bt)if(yt)e.texStorage2D(i.TEXTURE_2D,Qt,rt,st.width,st.height);else{let ht=st.width,kt=st.height;for(let te=0;te<Qt;te++)e.texImage2D(i.TEXTURE_2D,te,rt,ht,kt,0,xt,U,null),ht>>=1,kt>>=1}}else if(S.isHTMLTexture){if("texElementImage2D"in i){let ht=i.canvas;if(ht.hasAttribute("layoutsubtree")||ht.setAttribute("layoutsubtree","true"),st.parentNode!==ht){ht.appendChild(st),h.add(S),ht.onpaint=kt=>{let te=kt.changedElements;for(let Rt of h)te.includes(Rt.image)&&(Rt.needsUpdate=!0)},ht.requestPaint();return}if(i.texElementImage2D.length===3)i.texElementImage2D(i.TEXTURE_2D,i.RGBA8,st);else{let te=i.RGBA,Rt=i.RGBA,he=i.UNSIGNED_BYTE;i.texElementImage2D(i.TEXTURE_2D,0,te,Rt,he,st)}i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_S,i.CLAMP_TO_EDGE),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_WRAP_T,i.CLAMP_TO_EDGE)}}else if(Et.length>0){if(yt&&bt){let ht=Yt(Et[0]);e.texStorage2D(i.TEXTURE_2D,Qt,rt,ht.width,ht.height)}for(let ht=0,kt=Et.length;ht<kt;ht++)nt=Et[ht],yt?Xt&&e.texSubImage2D(i.TEXTURE_2D,ht,0,0,xt,U,nt):e.texImage2D(i.TEXTURE_2D,ht,rt,xt,U,nt);S.generateMipmaps=!1}else if(yt){if(bt){let ht=Yt(st);e.texStorage2D(i.TEXTURE_2D,Qt,rt,ht.width,ht.height)}Xt&&e.texSubImage2D(i.TEXTURE_2D,0,0,0,xt,U,st)}else e.texImage2D(i.TEXTURE_2D,0,rt,xt,U,st);A(S)&&S.mipmapsAutoUpdate===!0&&M(dt),Mt.__version=vt.version,S.onUpdate&&S.onUpdate(S)}C.__version=S.version}function qe(C,S,X){if(S.image.length!==6)return;let dt=ce(C,S),ot=S.source;e.bindTexture(i.TEXTURE_CUBE_MAP,C.__webglTexture,i.TEXTURE0+X);let vt=n.get(ot);if(ot.version!==vt.__version||dt===!0){e.activeTexture(i.TEXTURE0+X);let Mt=ye.getPrimaries(ye.workingColorSpace),et=S.colorSpace===ps?null:ye.getPrimaries(S.colorSpace),st=S.colorSpace===ps||Mt===et?i.NONE:i.BROWSER_DEFAULT_WEBGL;e.pixelStorei(i.UNPACK_FLIP_Y_WEBGL,S.flipY),e.pixelStorei(i.UNPACK_PREMULTIPLY_ALPHA_WEBGL,S.premultiplyAlpha),e.pixelStorei(i.UNPACK_ALIGNMENT,S.unpackAlignment),e.pixelStorei(i.UNPACK_COLORSPACE_CONVERSION_WEBGL,st);let xt=S.isCompressedTexture||S.image[0].isCompressedTexture,U=S.image[0]&&S.image[0].isDataTexture,rt=[];for(let Rt=0;Rt<6;Rt++)!xt&&!U?rt[Rt]=y(S.image[Rt],!0,s.maxCubemapSize):rt[Rt]=U?S.image[Rt].image:S.image[Rt],rt[Rt]=Ht(S,rt[Rt]);let nt=rt[0],Et=r.convert(S.format,S.colorSpace),yt=r.convert(S.type),bt=E(S.internalFormat,Et,yt,S.normalized,S.colorSpace),Xt=S.isVideoTexture!==!0,Qt=vt.__version===void 0||dt===!0,ht=ot.dataReady,kt=T(S,nt);le(i.TEXTURE_CUBE_MAP,S);let te;if(S.isDepthTexture){if(bt=_(S.format===fs,S.type),Qt)if(Xt)e.texStorage2D(i.TEXTURE_CUBE_MAP,1,bt,nt.width,nt.height);else for(let Rt=0;Rt<6;Rt++)e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,0,bt,nt.width,nt.height,0,Et,yt,null)}else if(xt){Xt&&Qt&&e.texStorage2D(i.TEXTURE_CUBE_MAP,kt,bt,nt.width,nt.height);for(let Rt=0;Rt<6;Rt++){te=rt[Rt].mipmaps;for(let he=0;he<te.length;he++){let ke=te[he];S.format!==Li?Et!==null?Xt?ht&&e.compressedTexSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he,0,0,ke.width,ke.height,Et,ke.data):e.compressedTexImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he,bt,ke.width,ke.height,0,ke.data):Zt("WebGLRenderer: Attempt to load unsupported compressed texture format in .setTextureCube()"):Xt?ht&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he,0,0,ke.width,ke.height,Et,yt,ke.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he,bt,ke.width,ke.height,0,Et,yt,ke.data)}}}else{if(te=S.mipmaps,Xt&&Qt){te.length>0&&kt++;let Rt=Yt(rt[0]);e.texStorage2D(i.TEXTURE_CUBE_MAP,kt,bt,Rt.width,Rt.height)}for(let Rt=0;Rt<6;Rt++)if(U){Xt?ht&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,0,0,0,rt[Rt].width,rt[Rt].height,Et,yt,rt[Rt].data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,0,bt,rt[Rt].width,rt[Rt].height,0,Et,yt,rt[Rt].data);for(let he=0;he<te.length;he++){let kn=te[he].image[Rt].image;Xt?ht&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he+1,0,0,kn.width,kn.height,Et,yt,kn.data):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he+1,bt,kn.width,kn.height,0,Et,yt,kn.data)}}else{Xt?ht&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,0,0,0,Et,yt,rt[Rt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,0,bt,Et,yt,rt[Rt]);for(let he=0;he<te.length;he++){let ke=te[he];Xt?ht&&e.texSubImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he+1,0,0,Et,yt,ke.image[Rt]):e.texImage2D(i.TEXTURE_CUBE_MAP_POSITIVE_X+Rt,he+1,bt,Et,yt,ke.image[Rt])}}}A(S)&&S.mipmapsAutoUpdate===!0&&M(i.TEXTURE_CUBE_MAP),vt.__version=ot.version,S.onUpdate&&S.onUpdate(S)}C.__version=S.version}function De(C,S,X,dt,ot,vt){let Mt=r.convert(X.format,X.colorSpace),et=r.convert(X.type),st=E(X.internalFormat,Mt,et,X.normalized,X.colorSpace),xt=n.get(S),U=n.get(X);if(U.__renderTarget=S,!xt.__hasExternalTextures){let rt=Math.max(1,S.width>>vt),nt=Math.max(1,S.height>>vt);ot===i.TEXTURE_3D||ot===i.TEXTURE_2D_ARRAY?e.texImage3D(ot,vt,st,rt,nt,S.depth,0,Mt,et,null):e.texImage2D(ot,vt,st,rt,nt,0,Mt,et,null)}e.bindFramebuffer(i.FRAMEBUFFER,C),wt(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,dt,ot,U.__webglTexture,0,oe(S)):(ot===i.TEXTURE_2D||ot>=i.TEXTURE_CUBE_MAP_POSITIVE_X&&ot<=i.TEXTURE_CUBE_MAP_NEGATIVE_Z)&&i.framebufferTexture2D(i.FRAMEBUFFER,dt,ot,U.__webglTexture,vt),e.bindFramebuffer(i.FRAMEBUFFER,null)}function vn(C,S,X){if(i.bindRenderbuffer(i.RENDERBUFFER,C),S.depthBuffer){let dt=S.depthTexture,ot=dt&&dt.isDepthTexture?dt.type:null,vt=_(S.stencilBuffer,ot),Mt=S.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;wt(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,oe(S),vt,S.width,S.height):X?i.renderbufferStorageMultisample(i.RENDERBUFFER,oe(S),vt,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,vt,S.width,S.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,Mt,i.RENDERBUFFER,C)}else{let dt=S.textures;for(let ot=0;ot<dt.length;ot++){let vt=dt[ot],Mt=r.convert(vt.format,vt.colorSpace),et=r.convert(vt.type),st=E(vt.internalFormat,Mt,et,vt.normalized,vt.colorSpace);wt(S)?a.renderbufferStorageMultisampleEXT(i.RENDERBUFFER,oe(S),st,S.width,S.height):X?i.renderbufferStorageMultisample(i.RENDERBUFFER,oe(S),st,S.width,S.height):i.renderbufferStorage(i.RENDERBUFFER,st,S.width,S.height)}}i.bindRenderbuffer(i.RENDERBUFFER,null)}function ve(C,S,X){let dt=S.isWebGLCubeRenderTarget===!0;if(e.bindFramebuffer(i.FRAMEBUFFER,C),!(S.depthTexture&&S.depthTexture.isDepthTexture))throw new Error("THREE.WebGLTextures: renderTarget.depthTexture must be an instance of THREE.DepthTexture.");let ot=n.get(S.depthTexture);ot.__renderTarget=S;let vt=dt?S.depthTexture.image[0]:S.depthTexture.image;(!ot.__webglTexture||vt.width!==S.width||vt.height!==S.height)&&(vt.width=S.width,vt.height=S.height,S.depthTexture.needsUpdate=!0),dt?mt(S.depthTexture,0):gt(S.depthTexture,0);let Mt=ot.__webglTexture,et=oe(S),st=dt?i.TEXTURE_CUBE_MAP_POSITIVE_X+X:i.TEXTURE_2D,xt=S.depthTexture.format===fs?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;if(S.depthTexture.format===as)wt(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,xt,st,Mt,0,et):i.framebufferTexture2D(i.FRAMEBUFFER,xt,st,Mt,0);else if(S.depthTexture.format===fs)wt(S)?a.framebufferTexture2DMultisampleEXT(i.FRAMEBUFFER,xt,st,Mt,0,et):i.framebufferTexture2D(i.FRAMEBUFFER,xt,st,Mt,0);else throw new Error("THREE.WebGLTextures: Unknown depthTexture format.")}function fn(C){let S=n.get(C),X=C.isWebGLCubeRenderTarget===!0;if(S.__boundDepthTexture!==C.depthTexture){let dt=C.depthTexture;if(S.__depthDisposeCallback&&S.__depthDisposeCallback(),dt){let ot=()=>{delete S.__boundDepthTexture,delete S.__depthDisposeCallback,dt.removeEventListener("dispose",ot)};dt.addEventListener("dispose",ot),S.__depthDisposeCallback=ot}S.__boundDepthTexture=dt}if(C.depthTexture&&!S.__autoAllocateDepthBuffer)if(X)for(let dt=0;dt<6;dt++)ve(S.__webglFramebuffer[dt],C,dt);else C.texture.mipmaps.length>0?ve(S.__webglFramebuffer[0],C,0):ve(S.__webglFramebuffer,C,0);else if(X){S.__webglDepthbuffer=[];for(let dt=0;dt<6;dt++)if(e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[dt]),S.__webglDepthbuffer[dt]===void 0)S.__webglDepthbuffer[dt]=i.createRenderbuffer(),vn(S.__webglDepthbuffer[dt],C,!1);else{let ot=C.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,vt=S.__webglDepthbuffer[dt];i.bindRenderbuffer(i.RENDERBUFFER,vt),i.framebufferRenderbuffer(i.FRAMEBUFFER,ot,i.RENDERBUFFER,vt)}}else if(C.texture.mipmaps.length>0?e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer[0]):e.bindFramebuffer(i.FRAMEBUFFER,S.__webglFramebuffer),S.__webglDepthbuffer===void 0)S.__webglDepthbuffer=i.createRenderbuffer(),vn(S.__webglDepthbuffer,C,!1);else{let ot=C.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,vt=S.__webglDepthbuffer;i.bindRenderbuffer(i.RENDERBUFFER,vt),i.framebufferRenderbuffer(i.FRAMEBUFFER,ot,i.RENDERBUFFER,vt)}e.bindFramebuffer(i.FRAMEBUFFER,null)}function Je(C,S,X){let dt=n.get(C);S!==void 0&&De(dt.__webglFramebuffer,C,C.texture,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,0),X!==void 0&&fn(C)}function sn(C){let S=C.texture,X=n.get(C),dt=n.get(S);C.addEventListener("dispose",V),O(C);let ot=C.textures,vt=C.isWebGLCubeRenderTarget===!0,Mt=ot.length>1;if(Mt||(dt.__webglTexture===void 0&&(dt.__webglTexture=i.createTexture()),dt.__version=S.version,o.memory.textures++),vt){X.__webglFramebuffer=[];for(let et=0;et<6;et++)if(S.mipmaps.length>0){X.__webglFramebuffer[et]=[];for(let st=0;st<S.mipmaps.length;st++)X.__webglFramebuffer[et][st]=i.createFramebuffer()}else X.__webglFramebuffer[et]=i.createFramebuffer()}else{if(S.mipmaps.length>0){X.__webglFramebuffer=[];for(let et=0;et<S.mipmaps.length;et++)X.__webglFramebuffer[et]=i.createFramebuffer()}else X.__webglFramebuffer=i.createFramebuffer();if(Mt)for(let et=0,st=ot.length;et<st;et++){let xt=n.get(ot[et]);xt.__webglTexture===void 0&&(xt.__webglTexture=i.createTexture(),o.memory.textures++)}if(C.samples>0&&wt(C)===!1){X.__webglMultisampledFramebuffer=i.createFramebuffer(),X.__webglColorRenderbuffer=[],e.bindFramebuffer(i.FRAMEBUFFER,X.__webglMultisampledFramebuffer);for(let et=0;et<ot.length;et++){let st=ot[et];X.__webglColorRenderbuffer[et]=i.createRenderbuffer(),i.bindRenderbuffer(i.RENDERBUFFER,X.__webglColorRenderbuffer[et]);let xt=r.convert(st.format,st.colorSpace),U=r.convert(st.type),rt=E(st.internalFormat,xt,U,st.normalized,st.colorSpace,C.isXRRenderTarget===!0),nt=oe(C);i.renderbufferStorageMultisample(i.RENDERBUFFER,nt,rt,C.width,C.height),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+et,i.RENDERBUFFER,X.__webglColorRenderbuffer[et])}i.bindRenderbuffer(i.RENDERBUFFER,null),C.depthBuffer&&(X.__webglDepthRenderbuffer=i.createRenderbuffer(),vn(X.__webglDepthRenderbuffer,C,!0)),e.bindFramebuffer(i.FRAMEBUFFER,null)}}if(vt){e.bindTexture(i.TEXTURE_CUBE_MAP,dt.__webglTexture),le(i.TEXTURE_CUBE_MAP,S);for(let et=0;et<6;et++)if(S.mipmaps.length>0)for(let st=0;st<S.mipmaps.length;st++)De(X.__webglFramebuffer[et][st],C,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+et,st);else De(X.__webglFramebuffer[et],C,S,i.COLOR_ATTACHMENT0,i.TEXTURE_CUBE_MAP_POSITIVE_X+et,0);A(S)?M(i.TEXTURE_CUBE_MAP):S.mipmaps.length>0&&i.texParameteri(i.TEXTURE_CUBE_MAP,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}else if(Mt){for(let et=0,st=ot.length;et<st;et++){let xt=ot[et],U=n.get(xt),rt=i.TEXTURE_2D;(C.isWebGL3DRenderTarget||C.isWebGLArrayRenderTarget)&&(rt=C.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(rt,U.__webglTexture),le(rt,xt),De(X.__webglFramebuffer,C,xt,i.COLOR_ATTACHMENT0+et,rt,0),A(xt)&&M(rt)}e.unbindTexture()}else{let et=i.TEXTURE_2D;if((C.isWebGL3DRenderTarget||C.isWebGLArrayRenderTarget)&&(et=C.isWebGL3DRenderTarget?i.TEXTURE_3D:i.TEXTURE_2D_ARRAY),e.bindTexture(et,dt.__webglTexture),le(et,S),S.mipmaps.length>0)for(let st=0;st<S.mipmaps.length;st++)De(X.__webglFramebuffer[st],C,S,i.COLOR_ATTACHMENT0,et,st);else De(X.__webglFramebuffer,C,S,i.COLOR_ATTACHMENT0,et,0);A(S)?M(et):S.mipmaps.length>0&&i.texParameteri(et,i.TEXTURE_MAX_LEVEL,S.mipmaps.length-1),e.unbindTexture()}C.depthBuffer&&fn(C)}function F(C){let S=C.textures;for(let X=0,dt=S.length;X<dt;X++){let ot=S[X];if(A(ot)&&ot.mipmapsAutoUpdate===!0){let vt=R(C),Mt=n.get(ot).__webglTexture;e.bindTexture(vt,Mt),M(vt),e.unbindTexture()}}}let Ct=[];function Jt(C){if(C.samples>0){if(wt(C)===!1){let S=C.textures,X=C.width,dt=C.height,ot=i.COLOR_BUFFER_BIT,vt=C.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT,Mt=n.get(C),et=S.length>1;if(et)for(let xt=0;xt<S.length;xt++)e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.RENDERBUFFER,null),e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.TEXTURE_2D,null,0);e.bindFramebuffer(i.READ_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),C.texture.mipmaps.length>0?e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer[0]):e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Mt.__webglFramebuffer);for(let xt=0;xt<S.length;xt++){if(C.resolveDepthBuffer&&(C.depthBuffer&&(ot|=i.DEPTH_BUFFER_BIT),C.stencilBuffer&&C.resolveStencilBuffer&&(ot|=i.STENCIL_BUFFER_BIT)),et){i.framebufferRenderbuffer(i.READ_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.RENDERBUFFER,Mt.__webglColorRenderbuffer[xt]);let U=n.get(S[xt]).__webglTexture;i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0,i.TEXTURE_2D,U,0)}i.blitFramebuffer(0,0,X,dt,0,0,X,dt,ot,i.NEAREST),c===!0&&(Ct.length=0,Ct.push(i.COLOR_ATTACHMENT0+xt),C.depthBuffer&&C.storeMultisampledDepthBuffer===!1&&Ct.push(vt),i.invalidateFramebuffer(i.READ_FRAMEBUFFER,Ct))}if(e.bindFramebuffer(i.READ_FRAMEBUFFER,null),e.bindFramebuffer(i.DRAW_FRAMEBUFFER,null),et)for(let xt=0;xt<S.length;xt++){e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglMultisampledFramebuffer),i.framebufferRenderbuffer(i.FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.RENDERBUFFER,Mt.__webglColorRenderbuffer[xt]);let U=n.get(S[xt]).__webglTexture;e.bindFramebuffer(i.FRAMEBUFFER,Mt.__webglFramebuffer),i.framebufferTexture2D(i.DRAW_FRAMEBUFFER,i.COLOR_ATTACHMENT0+xt,i.TEXTURE_2D,U,0)}e.bindFramebuffer(i.DRAW_FRAMEBUFFER,Mt.__webglMultisampledFramebuffer)}else if(C.depthBuffer&&C.storeMultisampledDepthBuffer===!1&&c){let S=C.stencilBuffer?i.DEPTH_STENCIL_ATTACHMENT:i.DEPTH_ATTACHMENT;i.invalidateFramebuffer(i.DRAW_FRAMEBUFFER,[S])}}}function oe(C){return Math.min(s.maxSamples,C.samples)}function wt(C){let S=n.get(C);return C.samples>0&&t.has("WEBGL_multisampled_render_to_texture")===!0&&S.__useRenderToTexture!==!1}function Ue(C){let S=o.render.frame;u.get(C)!==S&&(u.set(C,S),C.update())}function Ht(C,S){let X=C.colorSpace,dt=C.format,ot=C.type;return C.isCompressedTexture===!0||C.isVideoTexture===!0||X!==Fo&&X!==ps&&(ye.getTransfer(X)===Re?(dt!==Li||ot!==Jn)&&Zt("WebGLTextures: sRGB encoded textures have to use RGBAFormat and UnsignedByteType."):ne("WebGLTextures: Unsupported texture color space:",X)),S}function Yt(C){return typeof HTMLImageElement<"u"&&C instanceof HTMLImageElement?(l.width=C.naturalWidth||C.width,l.height=C.naturalHeight||C.height):typeof VideoFrame<"u"&&C instanceof VideoFrame?(l.width=C.displayWidth,l.height=C.displayHeight):(l.width=C.width,l.height=C.height),l}this.allocateTextureUnit=ct,this.resetTextureUnits=K,this.getTextureUnits=tt,this.setTextureUnits=ut,this.setTexture2D=gt,this.setTexture2DArray=it,this.setTexture3D=pt,this.setTextureCube=mt,this.rebindTextures=Je,this.setupRenderTarget=sn,this.updateRenderTargetMipmap=F,this.updateMultisampleRenderTarget=Jt,this.setupDepthRenderbuffer=fn,this.setupFrameBufferTexture=De,this.useMultisampledRTT=wt,this.dispose=H}function Cb(i,t){function e(n,s=ps){let r,o=ye.getTransfer(s);if(n===Jn)return i.UNSIGNED_BYTE;if(n===tc)return i.UNSIGNED_SHORT_4_4_4_4;if(n===ec)return i.UNSIGNED_SHORT_5_5_5_1;if(n===Uu)return i.UNSIGNED_INT_5_9_9_9_REV;if(n===Fu)return i.UNSIGNED_INT_10F_11F_11F_REV;if(n===Du)return i.BYTE;if(n===Nu)return i.SHORT;if(n===so)return i.UNSIGNED_SHORT;if(n===Ql)return i.INT;if(n===Ci)return i.UNSIGNED_INT;if(n===Pi)return i.FLOAT;if(n===Ii)return i.HALF_FLOAT;if(n===Ou)return i.ALPHA;if(n===Bu)return i.RGB;if(n===Li)return i.RGBA;if(n===as)return i.DEPTH_COMPONENT;if(n===fs)return i.DEPTH_STENCIL;if(n===ku)return i.RED;if(n===nc)return i.RED_INTEGER;if(n===ks)return i.RG;if(n===ic)return i.RG_INTEGER;if(n===sc)return i.RGBA_INTEGER;if(n===oa||n===aa||n===la||n===ca)if(o===Re)if(r=t.get("WEBGL_compressed_texture_s3tc_srgb"),r!==null){if(n===oa)return r.COMPRESSED_SRGB_S3TC_DXT1_EXT;if(n===aa)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT1_EXT;if(n===la)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT3_EXT;if(n===ca)return r.COMPRESSED_SRGB_ALPHA_S3TC_DXT5_EXT}else return null;else if(r=t.get("WEBGL_compressed_texture_s3tc"),r!==null){if(n===oa)return r.COMPRESSED_RGB_S3TC_DXT1_EXT;if(n===aa)return r.COMPRESSED_RGBA_S3TC_DXT1_EXT;if(n===la)return r.COMPRESSED_RGBA_S3TC_DXT3_EXT;if(n===ca)return r.COMPRESSED_RGBA_S3TC_DXT5_EXT}else return null;if(n===rc||n===oc||n===ac||n===lc)if(r=t.get("WEBGL_compressed_texture_pvrtc"),r!==null){if(n===rc)return r.COMPRESSED_RGB_PVRTC_4BPPV1_IMG;if(n===oc)return r.COMPRESSED_RGB_PVRTC_2BPPV1_IMG;if(n===ac)return r.COMPRESSED_RGBA_PVRTC_4BPPV1_IMG;if(n===lc)return r.COMPRESSED_RGBA_PVRTC_2BPPV1_IMG}else return null;if(n===cc||n===hc||n===uc||n===dc||n===fc||n===ha||n===pc)if(r=t.get("WEBGL_compressed_texture_etc"),r!==null){if(n===cc||n===hc)return o===Re?r.COMPRESSED_SRGB8_ETC2:r.COMPRESSED_RGB8_ETC2;if(n===uc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ETC2_EAC:r.COMPRESSED_RGBA8_ETC2_EAC;if(n===dc)return r.COMPRESSED_R11_EAC;if(n===fc)return r.COMPRESSED_SIGNED_R11_EAC;if(n===ha)return r.COMPRESSED_RG11_EAC;if(n===pc)return r.COMPRESSED_SIGNED_RG11_EAC}else return null;if(n===mc||n===gc||n===_c||n===xc||n===yc||n===vc||n===Mc||n===Sc||n===bc||n===wc||n===Ec||n===Tc||n===Ac||n===Rc)if(r=t.get("WEBGL_compressed_texture_astc"),r!==null){if(n===mc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_4x4_KHR:r.COMPRESSED_RGBA_ASTC_4x4_KHR;if(n===gc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x4_KHR:r.COMPRESSED_RGBA_ASTC_5x4_KHR;if(n===_c)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_5x5_KHR:r.COMPRESSED_RGBA_ASTC_5x5_KHR;if(n===xc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x5_KHR:r.COMPRESSED_RGBA_ASTC_6x5_KHR;if(n===yc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_6x6_KHR:r.COMPRESSED_RGBA_ASTC_6x6_KHR;if(n===vc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x5_KHR:r.COMPRESSED_RGBA_ASTC_8x5_KHR;if(n===Mc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x6_KHR:r.COMPRESSED_RGBA_ASTC_8x6_KHR;if(n===Sc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_8x8_KHR:r.COMPRESSED_RGBA_ASTC_8x8_KHR;if(n===bc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x5_KHR:r.COMPRESSED_RGBA_ASTC_10x5_KHR;if(n===wc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x6_KHR:r.COMPRESSED_RGBA_ASTC_10x6_KHR;if(n===Ec)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x8_KHR:r.COMPRESSED_RGBA_ASTC_10x8_KHR;if(n===Tc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_10x10_KHR:r.COMPRESSED_RGBA_ASTC_10x10_KHR;if(n===Ac)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x10_KHR:r.COMPRESSED_RGBA_ASTC_12x10_KHR;if(n===Rc)return o===Re?r.COMPRESSED_SRGB8_ALPHA8_ASTC_12x12_KHR:r.COMPRESSED_RGBA_ASTC_12x12_KHR}else return null;if(n===Cc||n===Pc||n===Ic)if(r=t.get("EXT_texture_compression_bptc"),r!==null){if(n===Cc)return o===Re?r.COMPRESSED_SRGB_ALPHA_BPTC_UNORM_EXT:r.COMPRESSED_RGBA_BPTC_UNORM_EXT;if(n===Pc)return r.COMPRESSED_RGB_BPTC_SIGNED_FLOAT_EXT;if(n===Ic)return r.COMPRESSED_RGB_BPTC_UNSIGNED_FLOAT_EXT}else return null;if(n===Lc||n===Dc||n===ua||n===Nc)if(r=t.get("EXT_texture_compression_rgtc"),r!==null){if(n===Lc)return r.COMPRESSED_RED_RGTC1_EXT;if(n===Dc)return r.COMPRESSED_SIGNED_RED_RGTC1_EXT;if(n===ua)return r.COMPRESSED_RED_GREEN_RGTC2_EXT;if(n===Nc)return r.COMPRESSED_SIGNED_RED_GREEN_RGTC2_EXT}else return null;return n===or?i.UNSIGNED_INT_24_8:i[n]!==void 0?i[n]:null}return{convert:e}}var Pb=`
void main() {

	gl_Position = vec4( position, 1.0 );

}`,Ib=`
uniform sampler2DArray depthColor;
uniform float depthWidth;
uniform float depthHeight;

void main() {

	vec2 coord = vec2( gl_FragCoord.x / depthWidth, gl_FragCoord.y / depthHeight );

	if ( coord.x >= 1.0 ) {

		gl_FragDepth = texture( depthColor, vec3( coord.x - 1.0, coord.y, 1 ) ).r;

	} else {

		gl_FragDepth = texture( depthColor, vec3( coord.x, coord.y, 0 ) ).r;

	}

}`,ad=class{constructor(){this.texture=null,this.mesh=null,this.depthNear=0,this.depthFar=0}init(t,e){if(this.texture===null){let n=new $o(t.texture);(t.depthNear!==e.depthNear||t.depthFar!==e.depthFar)&&(this.depthNear=t.depthNear,this.depthFar=t.depthFar),this.texture=n}}getMesh(t){if(this.texture!==null&&this.mesh===null){let e=t.cameras[0].viewport,n=new Wi({vertexShader:Pb,fragmentShader:Ib,uniforms:{depthColor:{value:this.texture},depthWidth:{value:e.z},depthHeight:{value:e.w}}});this.mesh=new Rn(new nr(20,20),n)}return this.mesh}reset(){this.texture=null,this.mesh=null}getDepthTexture(){return this.texture}},ld=class extends Ai{constructor(t,e){super();let n=this,s=null,r=1,o=null,a="local-floor",c=1,l=null,u=null,h=null,d=null,f=null,g=null,v=typeof XRWebGLBinding<"u",p=new ad,m={},y=e.getContextAttributes(),A=null,M=null,R=[],E=[],_=new ie,T=null,O=null,N=new qn;N.viewport=new $e;let I=new qn;I.viewport=new $e;let V=[N,I],G=new $l,D=null,H=null;this.cameraAutoUpdate=!0,this.enabled=!1,this.isPresenting=!1,this.getController=function(j){let gt=R[j];return gt===void 0&&(gt=new Jr,R[j]=gt),gt.getTargetRaySpace()},this.getControllerGrip=function(j){let gt=R[j];return gt===void 0&&(gt=new Jr,R[j]=gt),gt.getGripSpace()},this.getHand=function(j){let gt=R[j];return gt===void 0&&(gt=new Jr,R[j]=gt),gt.getHandSpace()};function Y(j){let gt=E.indexOf(j.inputSource);if(gt===-1)return;let it=R[gt];it!==void 0&&(it.update(j.inputSource,j.frame,l||o),it.dispatchEvent({type:j.type,data:j.inputSource}))}function B(){s.removeEventListener("select",Y),s.removeEventListener("selectstart",Y),s.removeEventListener("selectend",Y),s.removeEventListener("squeeze",Y),s.removeEventListener("squeezestart",Y),s.removeEventListener("squeezeend",Y),s.removeEventListener("end",B),s.removeEventListener("inputsourceschange",lt);for(let j=0;j<R.length;j++){let gt=E[j];gt!==null&&(E[j]=null,R[j].disconnect(gt))}D=null,H=null,p.reset();for(let j in m)delete m[j];if(t.setRenderTarget(A),f=null,d=null,h=null,s=null,M=null,ct.stop(),n.isPresenting=!1,t.setPixelRatio(T),t.setSize(_.width,_.height,!1),O!==null){let j=O.camera;j.fov=O.fov,j.zoom=O.zoom,j.updateProjectionMatrix(),O=null}n.dispatchEvent({type:"sessionend"})}this.setFramebufferScaleFactor=function(j){r=j,n.isPresenting===!0&&Zt("WebXRManager: Cannot change framebuffer scale while presenting.")},this.setReferenceSpaceType=function(j){a=j,n.isPresenting===!0&&Zt("WebXRManager: Cannot change reference space type while presenting.")},this.getReferenceSpace=function(){return l||o},this.setReferenceSpace=function(j){l=j},this.getBaseLayer=function(){return d!==null?d:f},this.getBinding=function(){return h===null&&v&&(h=new XRWebGLBinding(s,e)),h},this.getFrame=function(){return g},this.getSession=function(){return s},this.setSession=async function(j){if(s=j,s!==null){if(A=t.getRenderTarget(),s.addEventListener("select",Y),s.addEventListener("selectstart",Y),s.addEventListener("selectend",Y),s.addEventListener("squeeze",Y),s.addEventListener("squeezestart",Y),s.addEventListener("squeezeend",Y),s.addEventListener("end",B),s.addEventListener("inputsourceschange",lt),y.xrCompatible!==!0&&await e.makeXRCompatible(),T=t.getPixelRatio(),t.getSize(_),v&&"createProjectionLayer"in XRWebGLBinding.prototype){let it=null,pt=null,mt=null;y.depth&&(mt=y.stencil?e.DEPTH24_STENCIL8:e.DEPTH_COMPONENT24,it=y.stencil?fs:as,pt=y.stencil?or:Ci);let Ft={colorFormat:e.RGBA8,depthFormat:mt,scaleFactor:r};h=this.getBinding(),d=h.createProjectionLayer(Ft),s.updateRenderState({layers:[d]}),t.setPixelRatio(1),t.setSize(d.textureWidth,d.textureHeight,!1),M=new ci(d.textureWidth,d.textureHeight,{format:Li,type:Jn,depthTexture:new us(d.textureWidth,d.textureHeight,pt,void 0,void 0,void 0,void 0,void 0,void 0,it),stencilBuffer:y.stencil,colorSpace:t.outputColorSpace,samples:y.antialias?4:0,resolveDepthBuffer:d.ignoreDepthValues===!1,resolveStencilBuffer:d.ignoreDepthValues===!1,storeMultisampledDepthBuffer:d.ignoreDepthValues===!1,storeMultisampledStencilBuffer:d.ignoreDepthValues===!1})}else{let it={antialias:y.antialias,alpha:!0,depth:y.depth,stencil:y.stencil,framebufferScaleFactor:r};f=new XRWebGLLayer(s,e,it),s.updateRenderState({baseLayer:f}),t.setPixelRatio(1),t.setSize(f.framebufferWidth,f.framebufferHeight,!1),M=new ci(f.framebufferWidth,f.framebufferHeight,{format:Li,type:Jn,colorSpace:t.outputColorSpace,stencilBuffer:y.stencil,resolveDepthBuffer:f.ignoreDepthValues===!1,resolveStencilBuffer:f.ignoreDepthValues===!1,storeMultisampledDepthBuffer:f.ignoreDepthValues===!1,storeMultisampledStencilBuffer:f.ignoreDepthValues===!1})}M.isXRRenderTarget=!0,this.setFoveation(c),l=null,o=await s.requestReferenceSpace(a),ct.setContext(s),ct.start(),n.isPresenting=!0,n.dispatchEvent({type:"sessionstart"})}},this.getEnvironmentBlendMode=function(){if(s!==null)return s.environmentBlendMode},this.getDepthTexture=function(){return p.getDepthTexture()};function lt(j){for(let gt=0;gt<j.removed.length;gt++){let it=j.removed[gt],pt=E.indexOf(it);pt>=0&&(E[pt]=null,R[pt].disconnect(it))}for(let gt=0;gt<j.added.length;gt++){let it=j.added[gt],pt=E.indexOf(it);if(pt===-1){for(let Ft=0;Ft<R.length;Ft++)if(Ft>=E.length){E.push(it),pt=Ft;break}else if(E[Ft]===null){E[Ft]=it,pt=Ft;break}if(pt===-1)break}let mt=R[pt];mt&&mt.connect(it)}}function Z(j,gt){gt===null?j.matrixWorld.copy(j.matrix):j.matrixWorld.multiplyMatrices(gt.matrixWorld,j.matrix),j.matrixWorldInverse.copy(j.matrixWorld).invert()}this.updateCamera=function(j){if(s===null)return;let gt=j.near,it=j.far;p.texture!==null&&(p.depthNear>0&&(gt=p.depthNear),p.depthFar>0&&(it=p.depthFar)),G.near=I.near=N.near=gt,G.far=I.far=N.far=it,(D!==G.near||H!==G.far)&&(s.updateRenderState({depthNear:G.near,depthFar:G.far}),D=G.near,H=G.far),G.layers.mask=j.layers.mask|6,N.layers.mask=G.layers.mask&-5,I.layers.mask=G.layers.mask&-3;let pt=j.parent,mt=G.cameras;Z(G,pt);for(let Ft=0;Ft<mt.length;Ft++)Z(mt[Ft],pt);G.projectionMatrix.copy(N.projectionMatrix),G.projectionMatrixInverse.copy(N.projectionMatrixInverse),O===null&&j.isPerspectiveCamera&&(O={camera:j,fov:j.fov,zoom:j.zoom}),K(j,G,pt)};function K(j,gt,it){it===null?j.matrix.copy(gt.matrixWorld):(j.matrix.copy(it.matrixWorld),j.matrix.invert(),j.matrix.multiply(gt.matrixWorld)),j.matrix.decompose(j.position,j.quaternion,j.scale),j.updateMatrixWorld(!0),j.projectionMatrix.copy(gt.projectionMatrix),j.projectionMatrixInverse.copy(gt.projectionMatrixInverse),j.isPerspectiveCamera&&(j.fov=$r*2*Math.atan(1/j.projectionMatrix.elements[5]),j.zoom=1)}this.getCamera=function(){return G},this.getFoveation=function(){if(!(d===null&&f===null))return c},this.setFoveation=function(j){c=j,d!==null&&(d.fixedFoveation=j),f!==null&&f.fixedFoveation!==void 0&&(f.fixedFoveation=j)},this.hasDepthSensing=function(){return p.texture!==null},this.getDepthSensingMesh=function(){return p.getMesh(G)},this.getCameraTexture=function(j){return m[j]};let tt=null;function ut(j,gt){if(u=gt.getViewerPose(l||o),g=gt,u!==null){let it=u.views;f!==null&&(t.setRenderTargetFramebuffer(M,f.framebuffer),t.setRenderTarget(M));let pt=!1;it.length!==G.cameras.length&&(G.cameras.length=0,pt=!0);for(let Vt=0;Vt<it.length;Vt++){let le=it[Vt],ce=null;if(f!==null)ce=f.getViewport(le);else{let Ce=h.getViewSubImage(d,le);ce=Ce.viewport,Vt===0&&(t.setRenderTargetTextures(M,Ce.colorTexture,Ce.depthStencilTexture),t.setRenderTarget(M))}let Kt=V[Vt];Kt===void 0&&(Kt=new qn,Kt.layers.enable(Vt),Kt.viewport=new $e,V[Vt]=Kt),Kt.matrix.fromArray(le.transform.matrix),Kt.matrix.decompose(Kt.position,Kt.quaternion,Kt.scale),Kt.projectionMatrix.fromArray(le.projectionMatrix),Kt.projectionMatrixInverse.copy(Kt.projectionMatrix).invert(),Kt.viewport.set(ce.x,ce.y,ce.width,ce.height),Vt===0&&(G.matrix.copy(Kt.matrix),G.matrix.decompose(G.position,G.quaternion,G.scale)),pt===!0&&G.cameras.push(Kt)}let mt=s.enabledFeatures;if(mt&&mt.includes("depth-sensing")&&s.depthUsage=="gpu-optimized"&&v){h=n.getBinding();let Vt=h.getDepthInformation(it[0]);Vt&&Vt.isValid&&Vt.texture&&p.init(Vt,s.renderState)}if(mt&&mt.includes("camera-access")&&v){t.state.unbindTexture(),h=n.getBinding();for(let Vt=0;Vt<it.length;Vt++){let le=it[Vt].camera;if(le){let ce=m[le];ce||(ce=new $o,m[le]=ce);let Kt=h.getCameraImage(le);ce.sourceTexture=Kt}}}}for(let it=0;it<R.length;it++){let pt=E[it],mt=R[it];pt!==null&&mt!==void 0&&mt.update(pt,gt,l||o)}tt&&tt(j,gt),gt.detectedPlanes&&n.dispatchEvent({type:"planesdetected",data:gt}),g=null}let ct=new lg;ct.setAnimationLoop(ut),this.setAnimationLoop=function(j){tt=j},this.dispose=function(){}}},Lb=new Xe,xg=new se;xg.set(-1,0,0,0,1,0,0,0,1);function Db(i,t){function e(p,m){p.matrixAutoUpdate===!0&&p.updateMatrix(),m.value.copy(p.matrix)}function n(p,m){m.color.getRGB(p.fogColor.value,Zu(i)),m.isFog?(p.fogNear.value=m.near,p.fogFar.value=m.far):m.isFogExp2&&(p.fogDensity.value=m.density)}function s(p,m,y,A,M){m.isNodeMaterial?m.uniformsNeedUpdate=!1:m.isMeshBasicMaterial?r(p,m):m.isMeshLambertMaterial?(r(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshToonMaterial?(r(p,m),h(p,m)):m.isMeshPhongMaterial?(r(p,m),u(p,m),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)):m.isMeshStandardMaterial?(r(p,m),d(p,m),m.isMeshPhysicalMaterial&&f(p,m,M)):m.isMeshMatcapMaterial?(r(p,m),g(p,m)):m.isMeshDepthMaterial?r(p,m):m.isMeshDistanceMaterial?(r(p,m),v(p,m)):m.isMeshNormalMaterial?r(p,m):m.isLineBasicMaterial?(o(p,m),m.isLineDashedMaterial&&a(p,m)):m.isPointsMaterial?c(p,m,y,A):m.isSpriteMaterial?l(p,m):m.isShadowMaterial?(p.color.value.copy(m.color),p.opacity.value=m.opacity):m.isShaderMaterial&&(m.uniformsNeedUpdate=!1)}function r(p,m){p.opacity.value=m.opacity,m.color&&p.diffuse.value.copy(m.color),m.emissive&&p.emissive.value.copy(m.emissive).multiplyScalar(m.emissiveIntensity),m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.bumpMap&&(p.bumpMap.value=m.bumpMap,e(m.bumpMap,p.bumpMapTransform),p.bumpScale.value=m.bumpScale,m.side===In&&(p.bumpScale.value*=-1)),m.normalMap&&(p.normalMap.value=m.normalMap,e(m.normalMap,p.normalMapTransform),p.normalScale.value.copy(m.normalScale),m.side===In&&p.normalScale.value.negate()),m.displacementMap&&(p.displacementMap.value=m.displacementMap,e(m.displacementMap,p.displacementMapTransform),p.displacementScale.value=m.displacementScale,p.displacementBias.value=m.displacementBias),m.emissiveMap&&(p.emissiveMap.value=m.emissiveMap,e(m.emissiveMap,p.emissiveMapTransform)),m.specularMap&&(p.specularMap.value=m.specularMap,e(m.specularMap,p.specularMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest);let y=t.get(m),A=y.envMap,M=y.envMapRotation;A&&(p.envMap.value=A,p.envMapRotation.value.setFromMatrix4(Lb.makeRotationFromEuler(M)).transpose(),A.isCubeTexture&&A.isRenderTargetTexture===!1&&p.envMapRotation.value.premultiply(xg),p.reflectivity.value=m.reflectivity,p.ior.value=m.ior,p.refractionRatio.value=m.refractionRatio),m.lightMap&&(p.lightMap.value=m.lightMap,p.lightMapIntensity.value=m.lightMapIntensity,e(m.lightMap,p.lightMapTransform)),m.aoMap&&(p.aoMap.value=m.aoMap,p.aoMapIntensity.value=m.aoMapIntensity,e(m.aoMap,p.aoMapTransform))}function o(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform))}function a(p,m){p.dashSize.value=m.dashSize,p.totalSize.value=m.dashSize+m.gapSize,p.scale.value=m.scale}function c(p,m,y,A){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.size.value=m.size*y,p.scale.value=A*.5,m.map&&(p.map.value=m.map,e(m.map,p.uvTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function l(p,m){p.diffuse.value.copy(m.color),p.opacity.value=m.opacity,p.rotation.value=m.rotation,m.map&&(p.map.value=m.map,e(m.map,p.mapTransform)),m.alphaMap&&(p.alphaMap.value=m.alphaMap,e(m.alphaMap,p.alphaMapTransform)),m.alphaTest>0&&(p.alphaTest.value=m.alphaTest)}function u(p,m){p.specular.value.copy(m.specular),p.shininess.value=Math.max(m.shininess,1e-4)}function h(p,m){m.gradientMap&&(p.gradientMap.value=m.gradientMap)}function d(p,m){p.metalness.value=m.metalness,m.metalnessMap&&(p.metalnessMap.value=m.metalnessMap,e(m.metalnessMap,p.metalnessMapTransform)),p.roughness.value=m.roughness,m.roughnessMap&&(p.roughnessMap.value=m.roughnessMap,e(m.roughnessMap,p.roughnessMapTransform)),m.envMap&&(p.envMapIntensity.value=m.envMapIntensity)}function f(p,m,y){p.ior.value=m.ior,m.diffuseRoughness>0&&(p.diffuseRoughness.value=m.diffuseRoughness,m.diffuseRoughnessMap&&(p.diffuseRoughnessMap.value=m.diffuseRoughnessMap,e(m.diffuseRoughnessMap,p.diffuseRoughnessMapTransform))),m.sheen>0&&(p.sheenColor.value.copy(m.sheenColor).multiplyScalar(m.sheen),p.sheenRoughness.value=m.sheenRoughness,m.sheenColorMap&&(p.sheenColorMap.value=m.sheenColorMap,e(m.sheenColorMap,p.sheenColorMapTransform)),m.sheenRoughnessMap&&(p.sheenRoughnessMap.value=m.sheenRoughnessMap,e(m.sheenRoughnessMap,p.sheenRoughnessMapTransform))),m.clearcoat>0&&(p.clearcoat.value=m.clearcoat,p.clearcoatRoughness.value=m.clearcoatRoughness,m.clearcoatMap&&(p.clearcoatMap.value=m.clearcoatMap,e(m.clearcoatMap,p.clearcoatMapTransform)),m.clearcoatRoughnessMap&&(p.clearcoatRoughnessMap.value=m.clearcoatRoughnessMap,e(m.clearcoatRoughnessMap,p.clearcoatRoughnessMapTransform)),m.clearcoatNormalMap&&(p.clearcoatNormalMap.value=m.clearcoatNormalMap,e(m.clearcoatNormalMap,p.clearcoatNormalMapTransform),p.clearcoatNormalScale.value.copy(m.clearcoatNormalScale),m.side===In&&p.clearcoatNormalScale.value.negate())),m.dispersion>0&&(p.dispersion.value=m.dispersion),m.retroreflectivity>0&&(p.retroreflectivity.value=m.retroreflectivity),m.iridescence>0&&(p.iridescence.value=m.iridescence,p.iridescenceIOR.value=m.iridescenceIOR,p.iridescenceThicknessMinimum.value=m.iridescenceThicknessMinimum,p.iridescenceThicknessMaximum.value=m.iridescenceThicknessMaximum,m.iridescenceMap&&(p.iridescenceMap.value=m.iridescenceMap,e(m.iridescenceMap,p.iridescenceMapTransform)),m.iridescenceThicknessMap&&(p.iridescenceThicknessMap.value=m.iridescenceThicknessMap,e(m.iridescenceThicknessMap,p.iridescenceThicknessMapTransform))),m.transmission>0&&(p.transmission.value=m.transmission,p.transmissionSamplerMap.value=y.texture,p.transmissionSamplerSize.value.set(y.width,y.height),m.transmissionMap&&(p.transmissionMap.value=m.transmissionMap,e(m.transmissionMap,p.transmissionMapTransform)),p.thickness.value=m.thickness,m.thicknessMap&&(p.thicknessMap.value=m.thicknessMap,e(m.thicknessMap,p.thicknessMapTransform)),p.attenuationDistance.value=m.attenuationDistance,p.attenuationColor.value.copy(m.attenuationColor)),m.anisotropy>0&&(p.anisotropyVector.value.set(m.anisotropy*Math.cos(m.anisotropyRotation),m.anisotropy*Math.sin(m.anisotropyRotation)),m.anisotropyMap&&(p.anisotropyMap.value=m.anisotropyMap,e(m.anisotropyMap,p.anisotropyMapTransform))),p.specularIntensity.value=m.specularIntensity,p.specularColor.value.copy(m.specularColor),m.specularColorMap&&(p.specularColorMap.value=m.specularColorMap,e(m.specularColorMap,p.specularColorMapTransform)),m.specularIntensityMap&&(p.specularIntensityMap.value=m.specularIntensityMap,e(m.specularIntensityMap,p.specularIntensityMapTransform))}function g(p,m){m.matcap&&(p.matcap.value=m.matcap)}function v(p,m){let y=t.get(m).light;p.referencePosition.value.setFromMatrixPosition(y.matrixWorld),p.nearDistance.value=y.shadow.camera.near,p.farDistance.value=y.shadow.camera.far}return{refreshFogUniforms:n,refreshMaterialUniforms:s}}function Nb(i,t,e,n){let s={},r={};function o(y,A){let M=A.program;n.uniformBlockBinding(y,M,s[y.id])}function a(y,A){let M=s[y.id];M===void 0&&(g(y),M=c(y),s[y.id]=M,y.addEventListener("dispose",p));let R=A.program;n.updateUBOMapping(y,R);let E=t.render.frame;r[y.id]!==E&&(l(y),r[y.id]=E)}function c(y){let A=i.createBuffer(),M=y.__size,R=y.usage;return i.bindBuffer(i.UNIFORM_BUFFER,A),i.bufferData(i.UNIFORM_BUFFER,M,R),i.bindBuffer(i.UNIFORM_BUFFER,null),A}function l(y){let A=s[y.id],M=y.uniforms,R=y.__cache;i.bindBuffer(i.UNIFORM_BUFFER,A);for(let E=0,_=M.length;E<_;E++){let T=M[E];if(Array.isArray(T))for(let O=0,N=T.length;O<N;O++)u(T[O],E,O,R);else u(T,E,0,R)}i.bindBuffer(i.UNIFORM_BUFFER,null)}function u(y,A,M,R){if(d(y,A,M,R)===!0){let E=y.__offset,_=y.value;if(Array.isArray(_)){let T=0;for(let O=0;O<_.length;O++){let N=_[O],I=v(N,!0);h(N,y.__data,T),T+=I.storage/Float32Array.BYTES_PER_ELEMENT}}else h(_,y.__data,0);i.bufferSubData(i.UNIFORM_BUFFER,E,y.__data)}}function h(y,A,M){typeof y=="number"||typeof y=="boolean"?A[M]=y:y.isMatrix3?(A[M]=y.elements[0],A[M+1]=y.elements[1],A[M+2]=y.elements[2],A[M+3]=0,A[M+4]=y.elements[3],A[M+5]=y.elements[4],A[M+6]=y.elements[5],A[M+7]=0,A[M+8]=y.elements[6],A[M+9]=y.elements[7],A[M+10]=y.elements[8],A[M+11]=0):ArrayBuffer.isView(y)?A.set(y.subarray(0,A.length-M),M):y.toArray(A,M)}function d(y,A,M,R){let E=y.value,_=A+"_"+M;if(Array.isArray(E)){R[_]===void 0&&(R[_]=[]);let T=R[_],O=!1;for(let N=0;N<E.length;N++)f(E[N],T,N)===!0&&(O=!0);return O}return f(E,R,_)}function f(y,A,M){if(A[M]===void 0)return typeof y=="number"||typeof y=="boolean"?A[M]=y:ArrayBuffer.isView(y)?A[M]=y.slice():A[M]=y.clone(),!0;{let R=A[M];if(typeof y=="number"||typeof y=="boolean"){if(R!==y)return A[M]=y,!0}else{if(ArrayBuffer.isView(y))return!0;if(R.equals(y)===!1)return R.copy(y),!0}}return!1}function g(y){let A=y.uniforms,M=0,R=16;for(let _=0,T=A.length;_<T;_++){let O=Array.isArray(A[_])?A[_]:[A[_]];for(let N=0,I=O.length;N<I;N++){let V=O[N],G=Array.isArray(V.value)?V.value:[V.value],D=Array.isArray(A[_])||Array.isArray(V.value),H=M;for(let B=0,lt=G.length;B<lt;B++){let Z=G[B],K=v(Z,D),tt=M%R,ut=tt%K.boundary,ct=tt+ut;M+=ut,ct!==0&&R-ct<K.storage&&(M+=R-ct),B===0&&(H=M),M+=K.storage}let Y=V.type==="int"?Int32Array:V.type==="uint"?Uint32Array:Float32Array;V.__data=new Y((M-H)/Float32Array.BYTES_PER_ELEMENT),V.__offset=H}}let E=M%R;return E>0&&(M+=R-E),y.__size=M,y.__cache={},this}function v(y,A){let M={boundary:0,storage:0};return typeof y=="number"||typeof y=="boolean"?(M.boundary=4,M.storage=4):y.isVector2?(M.boundary=8,M.storage=8):y.isVector3||y.isColor?(M.boundary=16,M.storage=12):y.isVector4?(M.boundary=16,M.storage=16):y.isMatrix3?(M.boundary=16,M.storage=48):y.isMatrix4?(M.boundary=16,M.storage=64):y.isTexture?Zt("WebGLRenderer: Texture samplers can not be part of an uniforms group."):ArrayBuffer.isView(y)?(M.boundary=16,M.storage=y.byteLength):Zt("WebGLRenderer: Unsupported uniform value type.",y),A===!0&&(M.boundary=16,M.storage=Math.ceil(M.storage/16)*16),M}function p(y){let A=y.target;A.removeEventListener("dispose",p),i.deleteBuffer(s[A.id]),delete s[A.id],delete r[A.id]}function m(){for(let y in s)i.deleteBuffer(s[y]);s={},r={}}return{bind:o,update:a,dispose:m}}var Ub=new Uint16Array([12469,15057,12620,14925,13266,14620,13807,14376,14323,13990,14545,13625,14713,13328,14840,12882,14931,12528,14996,12233,15039,11829,15066,11525,15080,11295,15085,10976,15082,10705,15073,10495,13880,14564,13898,14542,13977,14430,14158,14124,14393,13732,14556,13410,14702,12996,14814,12596,14891,12291,14937,11834,14957,11489,14958,11194,14943,10803,14921,10506,14893,10278,14858,9960,14484,14039,14487,14025,14499,13941,14524,13740,14574,13468,14654,13106,14743,12678,14818,12344,14867,11893,14889,11509,14893,11180,14881,10751,14852,10428,14812,10128,14765,9754,14712,9466,14764,13480,14764,13475,14766,13440,14766,13347,14769,13070,14786,12713,14816,12387,14844,11957,14860,11549,14868,11215,14855,10751,14825,10403,14782,10044,14729,9651,14666,9352,14599,9029,14967,12835,14966,12831,14963,12804,14954,12723,14936,12564,14917,12347,14900,11958,14886,11569,14878,11247,14859,10765,14828,10401,14784,10011,14727,9600,14660,9289,14586,8893,14508,8533,15111,12234,15110,12234,15104,12216,15092,12156,15067,12010,15028,11776,14981,11500,14942,11205,14902,10752,14861,10393,14812,9991,14752,9570,14682,9252,14603,8808,14519,8445,14431,8145,15209,11449,15208,11451,15202,11451,15190,11438,15163,11384,15117,11274,15055,10979,14994,10648,14932,10343,14871,9936,14803,9532,14729,9218,14645,8742,14556,8381,14461,8020,14365,7603,15273,10603,15272,10607,15267,10619,15256,10631,15231,10614,15182,10535,15118,10389,15042,10167,14963,9787,14883,9447,14800,9115,14710,8665,14615,8318,14514,7911,14411,7507,14279,7198,15314,9675,15313,9683,15309,9712,15298,9759,15277,9797,15229,9773,15166,9668,15084,9487,14995,9274,14898,8910,14800,8539,14697,8234,14590,7790,14479,7409,14367,7067,14178,6621,15337,8619,15337,8631,15333,8677,15325,8769,15305,8871,15264,8940,15202,8909,15119,8775,15022,8565,14916,8328,14804,8009,14688,7614,14569,7287,14448,6888,14321,6483,14088,6171,15350,7402,15350,7419,15347,7480,15340,7613,15322,7804,15287,7973,15229,8057,15148,8012,15046,7846,14933,7611,14810,7357,14682,7069,14552,6656,14421,6316,14251,5948,14007,5528,15356,5942,15356,5977,15353,6119,15348,6294,15332,6551,15302,6824,15249,7044,15171,7122,15070,7050,14949,6861,14818,6611,14679,6349,14538,6067,14398,5651,14189,5311,13935,4958,15359,4123,15359,4153,15356,4296,15353,4646,15338,5160,15311,5508,15263,5829,15188,6042,15088,6094,14966,6001,14826,5796,14678,5543,14527,5287,14377,4985,14133,4586,13869,4257,15360,1563,15360,1642,15358,2076,15354,2636,15341,3350,15317,4019,15273,4429,15203,4732,15105,4911,14981,4932,14836,4818,14679,4621,14517,4386,14359,4156,14083,3795,13808,3437,15360,122,15360,137,15358,285,15355,636,15344,1274,15322,2177,15281,2765,15215,3223,15120,3451,14995,3569,14846,3567,14681,3466,14511,3305,14344,3121,14037,2800,13753,2467,15360,0,15360,1,15359,21,15355,89,15346,253,15325,479,15287,796,15225,1148,15133,1492,15008,1749,14856,1882,14685,1886,14506,1783,14324,1608,13996,1398,13702,1183]),qi=null;function Fb(){return qi===null&&(qi=new Pl(Ub,16,16,ks,Ii),qi.name="DFG_LUT",qi.minFilter=Yn,qi.magFilter=Yn,qi.wrapS=Hi,qi.wrapT=Hi,qi.generateMipmaps=!1,qi.needsUpdate=!0),qi}var kc=class{constructor(t={}){let{canvas:e=Im(),context:n=null,depth:s=!0,stencil:r=!1,alpha:o=!1,antialias:a=!1,premultipliedAlpha:c=!0,preserveDrawingBuffer:l=!1,powerPreference:u="default",failIfMajorPerformanceCaveat:h=!1,reversedDepthBuffer:d=!1,outputBufferType:f=Jn}=t;this.isWebGLRenderer=!0;let g;if(n!==null){if(typeof WebGLRenderingContext<"u"&&n instanceof WebGLRenderingContext)throw new Error("THREE.WebGLRenderer: WebGL 1 is not supported since r163.");g=n.getContextAttributes().alpha}else g=o;let v=f,p=new Set([sc,ic,nc]),m=new Set([Jn,Ci,so,or,tc,ec]),y=new Uint32Array(4),A=new Int32Array(4),M={textures:[],min:[],max:[],resolution:[]},R=null,E=null,_=[],T=[],O=null;this.domElement=e,this.debug={checkShaderErrors:!0,diagnostics:{keywords:!1},onShaderError:null},this.autoClear=!0,this.autoClearColor=!0,this.autoClearDepth=!0,this.autoClearStencil=!0,this.sortObjects=!0,this.clippingPlanes=[],this.localClippingEnabled=!1,this.toneMapping=Xi,this.toneMappingExposure=1,this.transmissionResolutionScale=1;let N=this,I=!1,V=null,G=null,D=null,H=null;this._outputColorSpace=ai;let Y=0,B=0,lt=null,Z=-1,K=null,tt=new $e,ut=new $e,ct=null,j=new ae(0),gt=0,it=e.width,pt=e.height,mt=1,Ft=null,Wt=null,Vt=new $e(0,0,it,pt),le=new $e(0,0,it,pt),ce=!1,Kt=new Ls,Ce=new Il,Te=!1,qe=!1,De=new Xe,vn=new W,ve=new $e,fn={background:null,fog:null,environment:null,overrideMaterial:null,isScene:!0},Je=!1;function sn(){return lt===null?mt:1}let F=n;function Ct(w,k){return e.getContext(w,k)}let Jt,oe,wt,Ue,Ht,Yt,C,S,X,dt,ot,vt,Mt,et,st,xt,U,rt,nt,Et,yt,bt,Xt;try{let w={alpha:!0,depth:s,stencil:r,antialias:a,premultipliedAlpha:c,preserveDrawingBuffer:l,powerPreference:u,failIfMajorPerformanceCaveat:h};if("setAttribute"in e&&e.setAttribute("data-engine",`three.js r${"187"}`),e.addEventListener("webglcontextlost",kt,!1),e.addEventListener("webglcontextrestored",te,!1),e.addEventListener("webglcontextcreationerror",Rt,!1),F===null){let k="webgl2";if(F=Ct(k,w),F===null)throw Ct(k)?new Error("THREE.WebGLRenderer: Error creating WebGL context with your selected attributes."):new Error("THREE.WebGLRenderer: Error creating WebGL context.")}Qt()}catch(w){throw e.removeEventListener("webglcontextlost",kt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",Rt,!1),ne("WebGLRenderer: "+w.message),w}function Qt(){Jt=new YM(F),Jt.init(),yt=new Cb(F,Jt),oe=new FM(F,Jt,t,yt),wt=new Ab(F,Jt),oe.reversedDepthBuffer&&d&&wt.buffers.depth.setReversed(!0),G=F.createFramebuffer(),D=F.createFramebuffer(),H=F.createFramebuffer(),Ue=new JM(F),Ht=new fb,Yt=new Rb(F,Jt,wt,Ht,oe,yt,Ue),C=new qM(N),S=new jx(F),bt=new NM(F,S),X=new $M(F,S,Ue,bt),dt=new jM(F,X,S,bt,Ue),rt=new KM(F,oe,Yt),st=new OM(Ht),ot=new db(N,C,Jt,oe,bt,st),vt=new Db(N,Ht),Mt=new mb,et=new Mb(Jt),U=new DM(N,C,wt,dt,g,c),xt=new Tb(N,dt,oe),Xt=new Nb(F,Ue,oe,wt),nt=new UM(F,Jt,Ue),Et=new ZM(F,Jt,Ue),Ue.programs=ot.programs,N.capabilities=oe,N.extensions=Jt,N.properties=Ht,N.renderLists=Mt,N.shadowMap=xt,N.state=wt,N.info=Ue}v!==Jn&&(O=new tS(v,e.width,e.height,a,s,r));let ht=new ld(N,F);this.xr=ht,this.getContext=function(){return F},this.getContextAttributes=function(){return F.getContextAttributes()},this.forceContextLoss=function(){let w=Jt.get("WEBGL_lose_context");w&&w.loseContext()},this.forceContextRestore=function(){let w=Jt.get("WEBGL_lose_context");w&&w.restoreContext()},this.getPixelRatio=function(){return mt},this.setPixelRatio=function(w){w!==void 0&&(mt=w,this.setSize(it,pt,!1))},this.getSize=function(w){return w.set(it,pt)},this.setSize=function(w,k,Q=!0){if(ht.isPresenting){Zt("WebGLRenderer: Can't change size while VR device is presenting.");return}it=w,pt=k,e.width=Math.floor(w*mt),e.height=Math.floor(k*mt),Q===!0&&(e.style.width=w+"px",e.style.height=k+"px"),O!==null&&O.setSize(e.width,e.height),this.setViewport(0,0,w,k)},this.getDrawingBufferSize=function(w){return w.set(it*mt,pt*mt).floor()},this.setDrawingBufferSize=function(w,k,Q){it=w,pt=k,mt=Q,e.width=Math.floor(w*Q),e.height=Math.floor(k*Q),this.setViewport(0,0,w,k)},this.setEffects=function(w){if(v===Jn){ne("WebGLRenderer: setEffects() requires outputBufferType set to HalfFloatType or FloatType.");return}if(w){for(let k=0;k<w.length;k++)if(w[k].isOutputPass===!0){Zt("WebGLRenderer: OutputPass is not needed in setEffects(). Tone mapping and color space conversion are applied automatically.");break}}O.setEffects(w||[])},this.getCurrentViewport=function(w){return w.copy(tt)},this.getViewport=function(w){return w.copy(Vt)},this.setViewport=function(w,k,Q,q){w.isVector4?Vt.set(w.x,w.y,w.z,w.w):Vt.set(w,k,Q,q),wt.viewport(tt.copy(Vt).multiplyScalar(sn()).round())},this.getScissor=function(w){return w.copy(le)},this.setScissor=function(w,k,Q,q){w.isVector4?le.set(w.x,w.y,w.z,w.w):le.set(w,k,Q,q),wt.scissor(ut.copy(le).multiplyScalar(sn()).round())},this.getScissorTest=function(){return ce},this.setScissorTest=function(w){wt.setScissorTest(ce=w)},this.setOpaqueSort=function(w){Ft=w},this.setTransparentSort=function(w){Wt=w},this.getClearColor=function(w){return w.copy(U.getClearColor())},this.setClearColor=function(){U.setClearColor(...arguments)},this.getClearAlpha=function(){return U.getClearAlpha()},this.setClearAlpha=function(){U.setClearAlpha(...arguments)},this.clear=function(w=!0,k=!0,Q=!0){let q=0;if(w){let $=!1;if(lt!==null){let Tt=lt.texture.format;$=p.has(Tt)}if($){let Tt=lt.texture.type,Pt=m.has(Tt),At=U.getClearColor(),It=U.getClearAlpha(),Gt=At.r,ee=At.g,fe=At.b;Pt?(y[0]=Gt,y[1]=ee,y[2]=fe,y[3]=It,F.clearBufferuiv(F.COLOR,0,y)):(A[0]=Gt,A[1]=ee,A[2]=fe,A[3]=It,F.clearBufferiv(F.COLOR,0,A))}else q|=F.COLOR_BUFFER_BIT}k&&(q|=F.DEPTH_BUFFER_BIT,this.state.buffers.depth.setMask(!0)),Q&&(q|=F.STENCIL_BUFFER_BIT,this.state.buffers.stencil.setMask(4294967295)),q!==0&&F.clear(q)},this.clearColor=function(){this.clear(!0,!1,!1)},this.clearDepth=function(){this.clear(!1,!0,!1)},this.clearStencil=function(){this.clear(!1,!1,!0)},this.setNodesHandler=function(w){w.setRenderer(this),V=w},this.dispose=function(){e.removeEventListener("webglcontextlost",kt,!1),e.removeEventListener("webglcontextrestored",te,!1),e.removeEventListener("webglcontextcreationerror",Rt,!1),U.dispose(),Mt.dispose(),et.dispose(),Yt.dispose(),Ht.dispose(),C.dispose(),dt.dispose(),X.dispose(),bt.dispose(),Xt.dispose(),ot.dispose(),ht.dispose(),ht.removeEventListener("sessionstart",ya),ht.removeEventListener("sessionend",Di),$i.stop()};function kt(w){w.preventDefault(),Wu("WebGLRenderer: Context Lost."),I=!0}function te(){Wu("WebGLRenderer: Context Restored."),I=!1;let w=Ue.autoReset,k=xt.enabled,Q=xt.autoUpdate,q=xt.needsUpdate,$=xt.type;Qt(),Ue.autoReset=w,xt.enabled=k,xt.autoUpdate=Q,xt.needsUpdate=q,xt.type=$}function Rt(w){ne("WebGLRenderer: A WebGL context could not be created. Reason: ",w.statusMessage)}function he(w){let k=w.target;k.removeEventListener("dispose",he),ke(k)}function ke(w){kn(w),Ht.remove(w)}function kn(w){let k=Ht.get(w).programs;k!==void 0&&(k.forEach(function(Q){ot.releaseProgram(Q)}),w.isShaderMaterial&&ot.releaseShaderCache(w))}this.renderBufferDirect=function(w,k,Q,q,$,Tt){k===null&&(k=fn);let Pt=$.isMesh&&$.matrixWorld.determinantAffine()<0,At=uo(w,k,Q,q,$);wt.setMaterial(q,Pt);let It=Q.index,Gt=1;if(q.wireframe===!0){if(It=X.getWireframeAttribute(Q),It===void 0)return;Gt=2}let ee=Q.drawRange,fe=Q.attributes.position,zt=ee.start*Gt,pe=(ee.start+ee.count)*Gt;Tt!==null&&(zt=Math.max(zt,Tt.start*Gt),pe=Math.min(pe,(Tt.start+Tt.count)*Gt)),It!==null?(zt=Math.max(zt,0),pe=Math.min(pe,It.count)):fe!=null&&(zt=Math.max(zt,0),pe=Math.min(pe,fe.count));let Ze=pe-zt;if(Ze<0||Ze===1/0)return;bt.setup($,q,At,Q,It);let Pe,Ie=nt;if(It!==null&&(Pe=S.get(It),Ie=Et,Ie.setIndex(Pe)),$.isMesh)q.wireframe===!0?(wt.setLineWidth(q.wireframeLinewidth*sn()),Ie.setMode(F.LINES)):Ie.setMode(F.TRIANGLES);else if($.isLine){let pn=q.linewidth;pn===void 0&&(pn=1),wt.setLineWidth(pn*sn()),$.isLineSegments?Ie.setMode(F.LINES):$.isLineLoop?Ie.setMode(F.LINE_LOOP):Ie.setMode(F.LINE_STRIP)}else $.isPoints?Ie.setMode(F.POINTS):$.isSprite&&Ie.setMode(F.TRIANGLES);if($.isBatchedMesh)if(Jt.get("WEBGL_multi_draw"))Ie.renderMultiDraw($._multiDrawStarts,$._multiDrawCounts,$._multiDrawCount);else{let pn=$._multiDrawStarts,Ot=$._multiDrawCounts,rn=$._multiDrawCount,_e=It?S.get(It).bytesPerElement:1,Ji=Ht.get(q).currentProgram.getUniforms();for(let on=0;on<rn;on++)Ji.setValue(F,"_gl_DrawID",on),Ie.render(pn[on]/_e,Ot[on])}else if($.isInstancedMesh)Ie.renderInstances(zt,Ze,$.count);else if(Q.isInstancedBufferGeometry){let pn=Q._maxInstanceCount!==void 0?Q._maxInstanceCount:1/0,Ot=Math.min(Q.instanceCount,pn);Ie.renderInstances(zt,Ze,Ot)}else Ie.render(zt,Ze)};function lo(w,k,Q,q){V!==null&&w.isNodeMaterial&&V.setObject(q,w),Te===!0&&st.setState(w,Q,!1),w.transparent===!0&&w.side===$n&&w.forceSinglePass===!1?(w.side=In,w.needsUpdate=!0,Ni(w,k,q),w.side=Ri,w.needsUpdate=!0,Ni(w,k,q),w.side=$n):Ni(w,k,q)}this.compile=function(w,k,Q=null){Q===null&&(Q=w),V!==null&&V.renderStart(w,k,Q),E=et.get(Q),E.init(k),T.push(E),Q.traverseVisible(function($){$.isLight&&$.layers.test(k.layers)&&(E.pushLight($),$.castShadow&&E.pushShadow($))}),w!==Q&&w.traverseVisible(function($){$.isLight&&$.layers.test(k.layers)&&(E.pushLight($),$.castShadow&&E.pushShadow($))}),E.setupLights(),V!==null&&V.updateLights(E.state.lightsArray),qe=this.localClippingEnabled,Te=st.init(this.clippingPlanes,qe),Te===!0&&st.setGlobalState(this.clippingPlanes,k),V!==null&&xt.render(E.state.shadowsArray,Q,k);let q=new Set;return w.traverse(function($){if(!($.isMesh||$.isPoints||$.isLine||$.isSprite))return;let Tt=$.material;if(Tt)if(Array.isArray(Tt))for(let Pt=0;Pt<Tt.length;Pt++){let At=Tt[Pt];lo(At,Q,k,$),q.add(At)}else lo(Tt,Q,k,$),q.add(Tt)}),E=T.pop(),V!==null&&V.renderEnd(),q},this.compileAsync=function(w,k,Q=null){let q=this.compile(w,k,Q);return new Promise($=>{function Tt(){if(q.forEach(function(Pt){let It=Ht.get(Pt).currentProgram;(It===void 0||It.isReady())&&q.delete(Pt)}),q.size===0){$(w);return}setTimeout(Tt,10)}Jt.get("KHR_parallel_shader_compile")!==null?Tt():setTimeout(Tt,10)})};let lr=null;function th(w){lr&&lr(w)}function ya(){$i.stop()}function Di(){$i.start()}let $i=new lg;$i.setAnimationLoop(th),typeof self<"u"&&$i.setContext(self),this.setAnimationLoop=function(w){lr=w,ht.setAnimationLoop(w),w===null?$i.stop():$i.start()},ht.addEventListener("sessionstart",ya),ht.addEventListener("sessionend",Di),this.render=function(w,k){if(k!==void 0&&k.isCamera!==!0){ne("WebGLRenderer.render: camera is not an instance of THREE.Camera.");return}if(I===!0)return;V!==null&&V.renderStart(w,k);let Q=ht.enabled===!0&&ht.isPresenting===!0,q=O!==null&&(lt===null||Q)&&O.begin(N,lt);if(w.matrixWorldAutoUpdate===!0&&w.updateMatrixWorld(),k.parent===null&&k.matrixWorldAutoUpdate===!0&&k.updateMatrixWorld(),ht.enabled===!0&&ht.isPresenting===!0&&(O===null||O.isCompositing()===!1)&&(ht.cameraAutoUpdate===!0&&ht.updateCamera(k),k=ht.getCamera()),w.isScene===!0&&w.onBeforeRender(N,w,k,lt),E=et.get(w,T.length),E.init(k),E.state.textureUnits=Yt.getTextureUnits(),T.push(E),De.multiplyMatrices(k.projectionMatrix,k.matrixWorldInverse),k.isArrayCamera?Ce.setFromArrayCamera(k):Kt.setFromProjectionMatrix(De,gi,k.reversedDepth),qe=this.localClippingEnabled,Te=st.init(this.clippingPlanes,qe),R=Mt.get(w,_.length),R.init(),_.push(R),this.info.render.frame++,ht.enabled===!0&&ht.isPresenting===!0){let Pt=N.xr.getDepthSensingMesh();Pt!==null&&Zi(Pt,k,-1/0,N.sortObjects)}Zi(w,k,0,N.sortObjects),R.finish(),V!==null&&V.updateLights(E.state.lightsArray),N.sortObjects===!0&&R.sort(Ft,Wt),Je=ht.enabled===!1||ht.isPresenting===!1||ht.hasDepthSensing()===!1,Je&&U.addToRenderList(R,w),this.info.autoReset===!0&&this.info.reset(),Te===!0&&st.beginShadows();let $=E.state.shadowsArray;if(xt.render($,w,k),Te===!0&&st.endShadows(),(q&&O.hasRenderPass())===!1){let Pt=R.opaque,At=R.transmissive;if(E.setupLights(),k.isArrayCamera){let It=k.cameras;if(At.length>0)for(let Gt=0,ee=It.length;Gt<ee;Gt++){let fe=It[Gt];_i(Pt,At,w,fe)}Je&&U.render(w);for(let Gt=0,ee=It.length;Gt<ee;Gt++){let fe=It[Gt];co(R,w,fe,fe.viewport)}}else At.length>0&&_i(Pt,At,w,k),Je&&U.render(w),co(R,w,k)}lt!==null&&B===0&&(Yt.updateMultisampleRenderTarget(lt),Yt.updateRenderTargetMipmap(lt)),q&&O.end(N),w.isScene===!0&&w.onAfterRender(N,w,k),bt.resetDefaultState(),Z=-1,K=null,T.pop(),T.length>0?(E=T[T.length-1],Yt.setTextureUnits(E.state.textureUnits),Te===!0&&st.setGlobalState(N.clippingPlanes,E.state.camera)):E=null,_.pop(),_.length>0?R=_[_.length-1]:R=null,V!==null&&V.renderEnd()};function Zi(w,k,Q,q){if(w.visible===!1)return;if(w.layers.test(k.layers)){if(w.isGroup)Q=w.renderOrder;else if(w.isLOD)w.autoUpdate===!0&&w.update(k);else if(w.isLight)E.pushLight(w),w.castShadow&&E.pushShadow(w);else if(w.isSprite){let Pt=k.isArrayCamera?Ce:Kt;if(!w.frustumCulled||w.intersectsFrustum(Pt)){q&&ve.setFromMatrixPosition(w.matrixWorld).applyMatrix4(De);let At=dt.update(w),It=w.material;It.visible&&R.push(w,At,It,Q,ve.z,null,k)}}else if(w.isMesh||w.isLine||w.isPoints){let Pt=k.isArrayCamera?Ce:Kt;if(!w.frustumCulled||w.intersectsFrustum(Pt)){let At=dt.update(w),It=w.material;if(q&&(w.boundingSphere!==void 0?(w.boundingSphere===null&&w.computeBoundingSphere(),ve.copy(w.boundingSphere.center)):(At.boundingSphere===null&&At.computeBoundingSphere(),ve.copy(At.boundingSphere.center)),ve.applyMatrix4(w.matrixWorld).applyMatrix4(De)),Array.isArray(It)){let Gt=At.groups;for(let ee=0,fe=Gt.length;ee<fe;ee++){let zt=Gt[ee],pe=It[zt.materialIndex];pe&&pe.visible&&R.push(w,At,pe,Q,ve.z,zt,k)}}else It.visible&&R.push(w,At,It,Q,ve.z,null,k)}}}let Tt=w.children;for(let Pt=0,At=Tt.length;Pt<At;Pt++)Zi(Tt[Pt],k,Q,q)}function co(w,k,Q,q){let{opaque:$,transmissive:Tt,transparent:Pt}=w;E.setupLightsView(Q),Te===!0&&st.setGlobalState(N.clippingPlanes,Q),q&&wt.viewport(tt.copy(q)),$.length>0&&Ke($,k,Q),Tt.length>0&&Ke(Tt,k,Q),Pt.length>0&&Ke(Pt,k,Q),wt.buffers.depth.setTest(!0),wt.buffers.depth.setMask(!0),wt.buffers.color.setMask(!0),wt.setPolygonOffset(!1)}function _i(w,k,Q,q){if((Q.isScene===!0?Q.overrideMaterial:null)!==null)return;if(E.state.transmissionRenderTarget[q.id]===void 0){let zt=Jt.has("EXT_color_buffer_half_float")||Jt.has("EXT_color_buffer_float");E.state.transmissionRenderTarget[q.id]=new ci(1,1,{generateMipmaps:!0,type:zt?Ii:Jn,minFilter:ds,samples:Math.max(4,oe.samples),stencilBuffer:r,resolveDepthBuffer:!1,resolveStencilBuffer:!1,storeMultisampledDepthBuffer:!1,storeMultisampledStencilBuffer:!1,colorSpace:ye.workingColorSpace})}let Tt=E.state.transmissionRenderTarget[q.id],Pt=q.viewport||tt;Tt.setSize(Pt.z*N.transmissionResolutionScale,Pt.w*N.transmissionResolutionScale);let At=N.getRenderTarget(),It=N.getActiveCubeFace(),Gt=N.getActiveMipmapLevel();N.setRenderTarget(Tt),N.getClearColor(j),gt=N.getClearAlpha(),gt<1&&N.setClearColor(16777215,.5),N.clear(),Je&&U.render(Q);let ee=N.toneMapping;N.toneMapping=Xi;let fe=q.viewport;if(q.viewport!==void 0&&(q.viewport=void 0),E.setupLightsView(q),Te===!0&&st.setGlobalState(N.clippingPlanes,q),Ke(w,Q,q),Yt.updateMultisampleRenderTarget(Tt),Yt.updateRenderTargetMipmap(Tt),Jt.has("WEBGL_multisampled_render_to_texture")===!1){let zt=!1;for(let pe=0,Ze=k.length;pe<Ze;pe++){let Pe=k[pe],{object:Ie,geometry:pn,material:Ot,group:rn}=Pe;if(Ot.side===$n&&Ie.layers.test(q.layers)){let _e=Ot.side;Ot.side=In,Ot.needsUpdate=!0,en(Ie,Q,q,pn,Ot,rn),Ot.side=_e,Ot.needsUpdate=!0,zt=!0}}zt===!0&&(Yt.updateMultisampleRenderTarget(Tt),Yt.updateRenderTargetMipmap(Tt))}N.setRenderTarget(At,It,Gt),N.setClearColor(j,gt),fe!==void 0&&(q.viewport=fe),N.toneMapping=ee}function Ke(w,k,Q){let q=k.isScene===!0?k.overrideMaterial:null;for(let $=0,Tt=w.length;$<Tt;$++){let Pt=w[$],{object:At,geometry:It,group:Gt}=Pt,ee=Pt.material;ee.allowOverride===!0&&q!==null&&(ee=q),At.layers.test(Q.layers)&&en(At,k,Q,It,ee,Gt)}}function en(w,k,Q,q,$,Tt){V!==null&&$.isNodeMaterial&&V.setObject(w,$),w.onBeforeRender(N,k,Q,q,$,Tt),w.modelViewMatrix.multiplyMatrices(Q.matrixWorldInverse,w.matrixWorld),w.normalMatrix.getNormalMatrix(w.modelViewMatrix),$.onBeforeRender(N,k,Q,q,w,Tt),$.transparent===!0&&$.side===$n&&$.forceSinglePass===!1?($.side=In,$.needsUpdate=!0,N.renderBufferDirect(Q,k,q,$,w,Tt),$.side=Ri,$.needsUpdate=!0,N.renderBufferDirect(Q,k,q,$,w,Tt),$.side=$n):N.renderBufferDirect(Q,k,q,$,w,Tt),w.onAfterRender(N,k,Q,q,$,Tt)}function nn(w){let k=0;for(let Q of w)Q.texture!==null&&k++;return k}function Ni(w,k,Q){k.isScene!==!0&&(k=fn);let q=Ht.get(w),$=E.state.lights,Tt=E.state.shadowsArray,Pt=$.state.version,At=ot.getParameters(w,$.state,Tt,k,Q,E.state.lightProbeGridArray),It=ot.getProgramCacheKey(At),Gt=q.programs;q.environment=w.isMeshStandardMaterial||w.isMeshLambertMaterial||w.isMeshPhongMaterial?k.environment:null,q.fog=k.fog;let ee=w.isMeshStandardMaterial||w.isMeshLambertMaterial&&!w.envMap||w.isMeshPhongMaterial&&!w.envMap;q.envMap=C.get(w.envMap||q.environment,ee),q.envMapRotation=q.environment!==null&&w.envMap===null?k.environmentRotation:w.envMapRotation,Gt===void 0&&(w.addEventListener("dispose",he),Gt=new Map,q.programs=Gt,q.programVariants=new Map);let fe=Gt.get(It);if(fe!==void 0){if(q.currentProgram===fe&&q.lightsStateVersion===Pt)return ho(w,At),fe}else At.uniforms=ot.getUniforms(w),V!==null&&w.isNodeMaterial&&V.build(w,Q,At),w.onBeforeCompile(At,N),fe=ot.acquireProgram(At,It),Gt.set(It,fe),q.uniforms=At.uniforms;let zt=q.uniforms;return(!w.isShaderMaterial&&!w.isRawShaderMaterial||w.clipping===!0)&&(zt.clippingPlanes=st.uniform),ho(w,At),q.needsLights=gs(w),q.lightsStateVersion=Pt,q.needsLights&&(zt.ambientLightColor.value=$.state.ambient,zt.lightProbe.value=$.state.probe,zt.sunLights.value=$.state.sun,zt.sunLightShadows.value=$.state.sunShadow,zt.directionalLights.value=$.state.directional,zt.directionalLightShadows.value=$.state.directionalShadow,zt.spotLights.value=$.state.spot,zt.spotLightShadows.value=$.state.spotShadow,zt.rectAreaLights.value=$.state.rectArea,zt.ltc_1.value=$.state.rectAreaLTC1,zt.ltc_2.value=$.state.rectAreaLTC2,zt.pointLights.value=$.state.point,zt.pointLightShadows.value=$.state.pointShadow,zt.hemisphereLights.value=$.state.hemi,zt.sunShadowMatrix.value=$.state.sunShadowMatrix,zt.sunShadowCascade.value=$.state.sunShadowCascade,zt.directionalShadowMatrix.value=$.state.directionalShadowMatrix,zt.spotLightMatrix.value=$.state.spotLightMatrix,zt.spotLightMap.value=$.state.spotLightMap,zt.pointShadowMatrix.value=$.state.pointShadowMatrix),q.numLightProbeGrids=nn(E.state.lightProbeGridArray),q.currentProgram=fe,q.uniformsList=null,fe}function jn(w,k,Q,q,$){let Tt=Ht.get(w),Pt=Tt.currentProgram.id+","+q+","+$,At=Tt.programVariants.get(Pt);return At===void 0?(At=Ni(w,k,Q),Tt.programVariants.set(Pt,At)):(Tt.currentProgram=At,Tt.uniformsList=null,Tt.outputColorSpace=q,Tt.toneMapping=$),At}function ms(w){if(w.uniformsList===null){let k=w.currentProgram.getUniforms();w.uniformsList=oo.seqWithValue(k.seq,w.uniforms)}return w.uniformsList}function ho(w,k){let Q=Ht.get(w);Q.outputColorSpace=k.outputColorSpace,Q.batching=k.batching,Q.batchingColor=k.batchingColor,Q.instancing=k.instancing,Q.instancingColor=k.instancingColor,Q.instancingMorph=k.instancingMorph,Q.skinning=k.skinning,Q.morphTargets=k.morphTargets,Q.morphNormals=k.morphNormals,Q.morphColors=k.morphColors,Q.morphTargetsCount=k.morphTargetsCount,Q.numClippingPlanes=k.numClippingPlanes,Q.numIntersection=k.numClipIntersection,Q.vertexAlphas=k.vertexAlphas,Q.vertexTangents=k.vertexTangents,Q.toneMapping=k.toneMapping}function uo(w,k,Q,q,$){k.isScene!==!0&&(k=fn),Yt.resetTextureUnits();let Tt=k.fog,Pt=q.isMeshStandardMaterial||q.isMeshLambertMaterial||q.isMeshPhongMaterial?k.environment:null,At=lt===null?N.outputColorSpace:lt.isXRRenderTarget===!0?lt.texture.colorSpace:ye.workingColorSpace,It=q.isMeshStandardMaterial||q.isMeshLambertMaterial&&!q.envMap||q.isMeshPhongMaterial&&!q.envMap,Gt=C.get(q.envMap||Pt,It),ee=q.vertexColors===!0&&!!Q.attributes.color&&Q.attributes.color.itemSize===4,fe=!!Q.attributes.tangent&&(!!q.normalMap||q.anisotropy>0),zt=!!Q.morphAttributes.position,pe=!!Q.morphAttributes.normal,Ze=!!Q.morphAttributes.color,Pe=Xi;q.toneMapped&&(lt===null||lt.isXRRenderTarget===!0)&&(Pe=N.toneMapping);let Ie=Q.morphAttributes.position||Q.morphAttributes.normal||Q.morphAttributes.color,pn=Ie!==void 0?Ie.length:0,Ot=Ht.get(q),rn=E.state.lights;if(Te===!0&&(qe===!0||w!==K)){let Le=w===K&&q.id===Z;st.setState(q,w,Le)}let _e=!1,Ji=!1;q.version===Ot.__version?Ot.needsLights&&Ot.lightsStateVersion!==rn.state.version||$.isBatchedMesh&&Ot.batching===!1||!$.isBatchedMesh&&Ot.batching===!0||$.isBatchedMesh&&Ot.batchingColor===!0&&$._colorsTexture===null||$.isBatchedMesh&&Ot.batchingColor===!1&&$._colorsTexture!==null||$.isInstancedMesh&&Ot.instancing===!1||!$.isInstancedMesh&&Ot.instancing===!0||$.isSkinnedMesh&&Ot.skinning===!1||!$.isSkinnedMesh&&Ot.skinning===!0||$.isInstancedMesh&&Ot.instancingColor===!0&&$.instanceColor===null||$.isInstancedMesh&&Ot.instancingColor===!1&&$.instanceColor!==null||$.isInstancedMesh&&Ot.instancingMorph===!0&&$.morphTexture===null||$.isInstancedMesh&&Ot.instancingMorph===!1&&$.morphTexture!==null||Ot.envMap!==Gt||q.fog===!0&&Ot.fog!==Tt||Ot.numClippingPlanes!==void 0&&(Ot.numClippingPlanes!==st.numPlanes||Ot.numIntersection!==st.numIntersection)||Ot.vertexAlphas!==ee||Ot.vertexTangents!==fe||Ot.morphTargets!==zt||Ot.morphNormals!==pe||Ot.morphColors!==Ze||Ot.morphTargetsCount!==pn||Ot.numLightProbeGrids!==nn(E.state.lightProbeGridArray)?_e=!0:(Ot.outputColorSpace!==At||Ot.toneMapping!==Pe)&&(Ji=!0):(_e=!0,Ot.__version=q.version);let on=Ot.currentProgram;(_e===!0||Ji===!0)&&(on=Ji===!0?jn(q,k,$,At,Pe):Ni(q,k,$),V&&q.isNodeMaterial&&V.onUpdateProgram(q,on,Ot));let ur=!1,Ui=!1,Ki=!1,ue=on.getUniforms(),je=Ot.uniforms;if(wt.useProgram(on.program)&&(ur=!0,Ui=!0,Ki=!0),q.id!==Z&&(Z=q.id,Ui=!0),ur||K!==w){wt.buffers.depth.getReversed()&&w.reversedDepth!==!0&&(w._reversedDepth=!0,w.updateProjectionMatrix()),ue.setValue(F,"projectionMatrix",w.projectionMatrix),ue.setValue(F,"viewMatrix",w.matrixWorldInverse);let an=ue.map.cameraPosition;an!==void 0&&an.setValue(F,vn.setFromMatrixPosition(w.matrixWorld)),oe.logarithmicDepthBuffer&&ue.setValue(F,"logDepthBufFC",2/(Math.log(w.far+1)/Math.LN2)),(q.isMeshPhongMaterial||q.isMeshToonMaterial||q.isMeshLambertMaterial||q.isMeshBasicMaterial||q.isMeshStandardMaterial||q.isShaderMaterial)&&ue.setValue(F,"isOrthographic",w.isOrthographicCamera===!0),K!==w&&(K=w,Ui=!0,Ki=!0)}if(Ot.needsLights&&(rn.state.sunShadowMap.length>0&&ue.setValue(F,"sunShadowMap",rn.state.sunShadowMap,Yt),rn.state.directionalShadowMap.length>0&&ue.setValue(F,"directionalShadowMap",rn.state.directionalShadowMap,Yt),rn.state.spotShadowMap.length>0&&ue.setValue(F,"spotShadowMap",rn.state.spotShadowMap,Yt),rn.state.pointShadowMap.length>0&&ue.setValue(F,"pointShadowMap",rn.state.pointShadowMap,Yt)),$.isSkinnedMesh){ue.setOptional(F,$,"bindMatrix"),ue.setOptional(F,$,"bindMatrixInverse");let Le=$.skeleton;Le&&(Le.boneTexture===null&&Le.computeBoneTexture(),ue.setValue(F,"boneTexture",Le.boneTexture,Yt))}$.isBatchedMesh&&(ue.setOptional(F,$,"batchingTexture"),ue.setValue(F,"batchingTexture",$._matricesTexture,Yt),ue.setOptional(F,$,"batchingIdTexture"),ue.setValue(F,"batchingIdTexture",$._indirectTexture,Yt),ue.setOptional(F,$,"batchingColorTexture"),$._colorsTexture!==null&&ue.setValue(F,"batchingColorTexture",$._colorsTexture,Yt));let zn=Q.morphAttributes;if((zn.position!==void 0||zn.normal!==void 0||zn.color!==void 0)&&rt.update($,Q,on),(Ui||Ot.receiveShadow!==$.receiveShadow)&&(Ot.receiveShadow=$.receiveShadow,ue.setValue(F,"receiveShadow",$.receiveShadow)),(q.isMeshStandardMaterial||q.isMeshLambertMaterial||q.isMeshPhongMaterial)&&q.envMap===null&&k.environment!==null&&(je.envMapIntensity.value=k.environmentIntensity),je.dfgLUT!==void 0&&(je.dfgLUT.value=Fb()),Ui){if(ue.setValue(F,"toneMappingExposure",N.toneMappingExposure),Ot.needsLights&&cr(je,Ki),Tt&&q.fog===!0&&vt.refreshFogUniforms(je,Tt),vt.refreshMaterialUniforms(je,q,mt,pt,E.state.transmissionRenderTarget[w.id]),Ot.needsLights&&Ot.numLightProbeGrids>0){let Le=M,an=0;for(let Ln of E.state.lightProbeGridArray)Ln.texture!==null&&(Le.textures[an]=Ln.texture,Le.min[an]=Ln.boundingBox.min,Le.max[an]=Ln.boundingBox.max,Le.resolution[an]=Ln.resolution,an++);for(let Ln in Le)Le[Ln].length=an;je.probesSH.value=Le.textures,je.probesMin.value=Le.min,je.probesMax.value=Le.max,je.probesResolution.value=Le.resolution}oo.upload(F,ms(Ot),je,Yt)}if(q.isShaderMaterial&&q.uniformsNeedUpdate===!0&&(oo.upload(F,ms(Ot),je,Yt),q.uniformsNeedUpdate=!1),q.isSpriteMaterial&&ue.setValue(F,"center",$.center),ue.setValue(F,"modelViewMatrix",$.modelViewMatrix),ue.setValue(F,"normalMatrix",$.normalMatrix),ue.setValue(F,"modelMatrix",$.matrixWorld),q.uniformsGroups!==void 0){let Le=q.uniformsGroups;for(let an=0,Ln=Le.length;an<Ln;an++){let va=Le[an];Xt.update(va,on),Xt.bind(va,on)}}return on}function cr(w,k){w.ambientLightColor.needsUpdate=k,w.lightProbe.needsUpdate=k,w.sunLights.needsUpdate=k,w.sunLightShadows.needsUpdate=k,w.directionalLights.needsUpdate=k,w.directionalLightShadows.needsUpdate=k,w.pointLights.needsUpdate=k,w.pointLightShadows.needsUpdate=k,w.spotLights.needsUpdate=k,w.spotLightShadows.needsUpdate=k,w.rectAreaLights.needsUpdate=k,w.hemisphereLights.needsUpdate=k}function gs(w){return w.isMeshLambertMaterial||w.isMeshToonMaterial||w.isMeshPhongMaterial||w.isMeshStandardMaterial||w.isShadowMaterial||w.isShaderMaterial&&w.lights===!0}this.getActiveCubeFace=function(){return Y},this.getActiveMipmapLevel=function(){return B},this.getRenderTarget=function(){return lt},this.setRenderTargetTextures=function(w,k,Q){let q=Ht.get(w);q.__autoAllocateDepthBuffer=w.resolveDepthBuffer===!1,q.__autoAllocateDepthBuffer===!1&&(q.__useRenderToTexture=!1),Ht.get(w.texture).__webglTexture=k,Ht.get(w.depthTexture).__webglTexture=q.__autoAllocateDepthBuffer?void 0:Q,q.__hasExternalTextures=!0},this.setRenderTargetFramebuffer=function(w,k){let Q=Ht.get(w);Q.__webglFramebuffer=k,Q.__useDefaultFramebuffer=k===void 0},this.setRenderTarget=function(w,k=0,Q=0){lt=w,Y=k,B=Q;let q=null,$=!1,Tt=!1;if(w){let At=Ht.get(w);if(At.__useDefaultFramebuffer!==void 0){wt.bindFramebuffer(F.FRAMEBUFFER,At.__webglFramebuffer),tt.copy(w.viewport),ut.copy(w.scissor),ct=w.scissorTest,wt.viewport(tt),wt.scissor(ut),wt.setScissorTest(ct),Z=-1;return}else if(At.__webglFramebuffer===void 0)Yt.setupRenderTarget(w);else if(At.__hasExternalTextures)Yt.rebindTextures(w,Ht.get(w.texture).__webglTexture,Ht.get(w.depthTexture).__webglTexture);else if(w.depthBuffer){let ee=w.depthTexture;if(At.__boundDepthTexture!==ee){if(ee!==null&&Ht.has(ee)&&(w.width!==ee.image.width||w.height!==ee.image.height))throw new Error("THREE.WebGLRenderer: Attached DepthTexture is initialized to the incorrect size.");Yt.setupDepthRenderbuffer(w)}}let It=w.texture;(It.isData3DTexture||It.isDataArrayTexture||It.isCompressedArrayTexture)&&(Tt=!0);let Gt=Ht.get(w).__webglFramebuffer;w.isWebGLCubeRenderTarget?(Array.isArray(Gt[k])?q=Gt[k][Q]:q=Gt[k],$=!0):w.samples>0&&Yt.useMultisampledRTT(w)===!1?q=Ht.get(w).__webglMultisampledFramebuffer:Array.isArray(Gt)?q=Gt[Q]:q=Gt,tt.copy(w.viewport),ut.copy(w.scissor),ct=w.scissorTest}else tt.copy(Vt).multiplyScalar(mt).floor(),ut.copy(le).multiplyScalar(mt).floor(),ct=ce;if(Q!==0&&(q=G),wt.bindFramebuffer(F.FRAMEBUFFER,q)&&wt.drawBuffers(w,q),wt.viewport(tt),wt.scissor(ut),wt.setScissorTest(ct),$){let At=Ht.get(w.texture);F.framebufferTexture2D(F.FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_CUBE_MAP_POSITIVE_X+k,At.__webglTexture,Q)}else if(Tt){let At=k;for(let It=0;It<w.textures.length;It++){let Gt=Ht.get(w.textures[It]);F.framebufferTextureLayer(F.FRAMEBUFFER,F.COLOR_ATTACHMENT0+It,Gt.__webglTexture,Q,At)}}else if(w!==null&&Q!==0){let At=Ht.get(w.texture);F.framebufferTexture2D(F.FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_2D,At.__webglTexture,Q)}Z=-1};function hr(w){let k=Ht.get(w);return(k.__readFormat!==w.format||k.__readType!==w.type)&&(k.__readFormat=w.format,k.__readType=w.type,k.__formatReadable=oe.textureFormatReadable(w.format),k.__typeReadable=oe.textureTypeReadable(w.type)),k}this.readRenderTargetPixels=function(w,k,Q,q,$,Tt,Pt,At=0){if(!(w&&w.isWebGLRenderTarget)){ne("WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");return}let It=Ht.get(w).__webglFramebuffer;if(w.isWebGLCubeRenderTarget&&Pt!==void 0&&(It=It[Pt],Array.isArray(It)&&(It=It[0])),It){wt.bindFramebuffer(F.FRAMEBUFFER,It);try{let Gt=w.textures[At],ee=Gt.format,fe=Gt.type;w.textures.length>1&&F.readBuffer(F.COLOR_ATTACHMENT0+At);let zt=hr(Gt);if(zt.__formatReadable===!1){ne("WebGLRenderer.readRenderTargetPixels: renderTarget is not in RGBA or implementation defined format.");return}if(zt.__typeReadable===!1){ne("WebGLRenderer.readRenderTargetPixels: renderTarget is not in UnsignedByteType or implementation defined type.");return}k>=0&&k<=w.width-q&&Q>=0&&Q<=w.height-$&&F.readPixels(k,Q,q,$,yt.convert(ee),yt.convert(fe),Tt)}finally{let Gt=lt!==null?Ht.get(lt).__webglFramebuffer:null;wt.bindFramebuffer(F.FRAMEBUFFER,Gt)}}},this.readRenderTargetPixelsAsync=async function(w,k,Q,q,$,Tt,Pt,At=0){if(!(w&&w.isWebGLRenderTarget))throw new Error("THREE.WebGLRenderer.readRenderTargetPixels: renderTarget is not THREE.WebGLRenderTarget.");let It=Ht.get(w).__webglFramebuffer;if(w.isWebGLCubeRenderTarget&&Pt!==void 0&&(It=It[Pt],Array.isArray(It)&&(It=It[0])),It)if(k>=0&&k<=w.width-q&&Q>=0&&Q<=w.height-$){wt.bindFramebuffer(F.FRAMEBUFFER,It);let Gt=w.textures[At],ee=Gt.format,fe=Gt.type;w.textures.length>1&&F.readBuffer(F.COLOR_ATTACHMENT0+At);let zt=hr(Gt);if(zt.__formatReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in RGBA or implementation defined format.");if(zt.__typeReadable===!1)throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: renderTarget is not in UnsignedByteType or implementation defined type.");let pe=F.createBuffer();F.bindBuffer(F.PIXEL_PACK_BUFFER,pe),F.bufferData(F.PIXEL_PACK_BUFFER,Tt.byteLength,F.STREAM_READ),F.readPixels(k,Q,q,$,yt.convert(ee),yt.convert(fe),0),F.bindBuffer(F.PIXEL_PACK_BUFFER,null);let Ze=lt!==null?Ht.get(lt).__webglFramebuffer:null;wt.bindFramebuffer(F.FRAMEBUFFER,Ze);let Pe=F.fenceSync(F.SYNC_GPU_COMMANDS_COMPLETE,0);return F.flush(),await Dm(F,Pe,4),F.bindBuffer(F.PIXEL_PACK_BUFFER,pe),F.getBufferSubData(F.PIXEL_PACK_BUFFER,0,Tt),F.bindBuffer(F.PIXEL_PACK_BUFFER,null),F.deleteBuffer(pe),F.deleteSync(Pe),Tt}else throw new Error("THREE.WebGLRenderer.readRenderTargetPixelsAsync: requested read bounds are out of range.")},this.copyFramebufferToTexture=function(w,k=null,Q=0){let q=Math.pow(2,-Q),$=Math.floor(w.image.width*q),Tt=Math.floor(w.image.height*q),Pt=k!==null?k.x:0,At=k!==null?k.y:0;Yt.setTexture2D(w,0),F.copyTexSubImage2D(F.TEXTURE_2D,Q,0,0,Pt,At,$,Tt),wt.unbindTexture()},this.copyTextureToTexture=function(w,k,Q=null,q=null,$=0,Tt=0){let Pt,At,It,Gt,ee,fe,zt,pe,Ze,Pe=w.isCompressedTexture?w.mipmaps[Tt]:w.image;if(Q!==null)Pt=Q.max.x-Q.min.x,At=Q.max.y-Q.min.y,It=Q.isBox3?Q.max.z-Q.min.z:1,Gt=Q.min.x,ee=Q.min.y,fe=Q.isBox3?Q.min.z:0;else{let ue=Math.pow(2,-$);Pt=Math.floor(Pe.width*ue),At=Math.floor(Pe.height*ue),w.isDataArrayTexture?It=Pe.depth:w.isData3DTexture?It=Math.floor(Pe.depth*ue):It=1,Gt=0,ee=0,fe=0}q!==null?(zt=q.x,pe=q.y,Ze=q.z):(zt=0,pe=0,Ze=0);let Ie=yt.convert(k.format),pn=yt.convert(k.type),Ot;k.isData3DTexture?(Yt.setTexture3D(k,0),Ot=F.TEXTURE_3D):k.isDataArrayTexture||k.isCompressedArrayTexture?(Yt.setTexture2DArray(k,0),Ot=F.TEXTURE_2D_ARRAY):(Yt.setTexture2D(k,0),Ot=F.TEXTURE_2D),wt.activeTexture(F.TEXTURE0),wt.pixelStorei(F.UNPACK_FLIP_Y_WEBGL,k.flipY),wt.pixelStorei(F.UNPACK_PREMULTIPLY_ALPHA_WEBGL,k.premultiplyAlpha),wt.pixelStorei(F.UNPACK_ALIGNMENT,k.unpackAlignment);let rn=wt.getParameter(F.UNPACK_ROW_LENGTH),_e=wt.getParameter(F.UNPACK_IMAGE_HEIGHT),Ji=wt.getParameter(F.UNPACK_SKIP_PIXELS),on=wt.getParameter(F.UNPACK_SKIP_ROWS),ur=wt.getParameter(F.UNPACK_SKIP_IMAGES);wt.pixelStorei(F.UNPACK_ROW_LENGTH,Pe.width),wt.pixelStorei(F.UNPACK_IMAGE_HEIGHT,Pe.height),wt.pixelStorei(F.UNPACK_SKIP_PIXELS,Gt),wt.pixelStorei(F.UNPACK_SKIP_ROWS,ee),wt.pixelStorei(F.UNPACK_SKIP_IMAGES,fe);let Ui=w.isDataArrayTexture||w.isData3DTexture,Ki=k.isDataArrayTexture||k.isData3DTexture;if(w.isDepthTexture){let ue=Ht.get(w),je=Ht.get(k),zn=Ht.get(ue.__renderTarget),Le=Ht.get(je.__renderTarget);wt.bindFramebuffer(F.READ_FRAMEBUFFER,zn.__webglFramebuffer),wt.bindFramebuffer(F.DRAW_FRAMEBUFFER,Le.__webglFramebuffer);for(let an=0;an<It;an++)Ui&&(F.framebufferTextureLayer(F.READ_FRAMEBUFFER,F.COLOR_ATTACHMENT0,Ht.get(w).__webglTexture,$,fe+an),F.framebufferTextureLayer(F.DRAW_FRAMEBUFFER,F.COLOR_ATTACHMENT0,Ht.get(k).__webglTexture,Tt,Ze+an)),F.blitFramebuffer(Gt,ee,Gt+Pt,ee+At,zt,pe,zt+Pt,pe+At,F.DEPTH_BUFFER_BIT,F.NEAREST);wt.bindFramebuffer(F.READ_FRAMEBUFFER,null),wt.bindFramebuffer(F.DRAW_FRAMEBUFFER,null)}else if($!==0||w.isRenderTargetTexture||Ht.has(w)){let ue=Ht.get(w),je=Ht.get(k);wt.bindFramebuffer(F.READ_FRAMEBUFFER,D),wt.bindFramebuffer(F.DRAW_FRAMEBUFFER,H);for(let zn=0;zn<It;zn++)Ui?F.framebufferTextureLayer(F.READ_FRAMEBUFFER,F.COLOR_ATTACHMENT0,ue.__webglTexture,$,fe+zn):F.framebufferTexture2D(F.READ_FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_2D,ue.__webglTexture,$),Ki?F.framebufferTextureLayer(F.DRAW_FRAMEBUFFER,F.COLOR_ATTACHMENT0,je.__webglTexture,Tt,Ze+zn):F.framebufferTexture2D(F.DRAW_FRAMEBUFFER,F.COLOR_ATTACHMENT0,F.TEXTURE_2D,je.__webglTexture,Tt),$!==0?F.blitFramebuffer(Gt,ee,Gt+Pt,ee+At,zt,pe,zt+Pt,pe+At,F.COLOR_BUFFER_BIT,F.NEAREST):Ki?F.copyTexSubImage3D(Ot,Tt,zt,pe,Ze+zn,Gt,ee,Pt,At):F.copyTexSubImage2D(Ot,Tt,zt,pe,Gt,ee,Pt,At);wt.bindFramebuffer(F.READ_FRAMEBUFFER,null),wt.bindFramebuffer(F.DRAW_FRAMEBUFFER,null)}else Ki?w.isDataTexture||w.isData3DTexture?F.texSubImage3D(Ot,Tt,zt,pe,Ze,Pt,At,It,Ie,pn,Pe.data):k.isCompressedArrayTexture?F.compressedTexSubImage3D(Ot,Tt,zt,pe,Ze,Pt,At,It,Ie,Pe.data):F.texSubImage3D(Ot,Tt,zt,pe,Ze,Pt,At,It,Ie,pn,Pe):w.isDataTexture?F.texSubImage2D(F.TEXTURE_2D,Tt,zt,pe,Pt,At,Ie,pn,Pe.data):w.isCompressedTexture?F.compressedTexSubImage2D(F.TEXTURE_2D,Tt,zt,pe,Pe.width,Pe.height,Ie,Pe.data):F.texSubImage2D(F.TEXTURE_2D,Tt,zt,pe,Pt,At,Ie,pn,Pe);wt.pixelStorei(F.UNPACK_ROW_LENGTH,rn),wt.pixelStorei(F.UNPACK_IMAGE_HEIGHT,_e),wt.pixelStorei(F.UNPACK_SKIP_PIXELS,Ji),wt.pixelStorei(F.UNPACK_SKIP_ROWS,on),wt.pixelStorei(F.UNPACK_SKIP_IMAGES,ur),Tt===0&&k.generateMipmaps===!0&&k.mipmapsAutoUpdate===!0&&F.generateMipmap(Ot),wt.unbindTexture()},this.initRenderTarget=function(w){Ht.get(w).__webglFramebuffer===void 0&&Yt.setupRenderTarget(w)},this.initTexture=function(w){w.isCubeTexture?Yt.setTextureCube(w,0):w.isData3DTexture?Yt.setTexture3D(w,0):w.isDataArrayTexture||w.isCompressedArrayTexture?Yt.setTexture2DArray(w,0):Yt.setTexture2D(w,0),wt.unbindTexture()},this.resetState=function(){Y=0,B=0,lt=null,wt.reset(),bt.reset()},typeof __THREE_DEVTOOLS__<"u"&&__THREE_DEVTOOLS__.dispatchEvent(new CustomEvent("observe",{detail:this}))}get coordinateSystem(){return gi}get outputColorSpace(){return this._outputColorSpace}set outputColorSpace(t){this._outputColorSpace=t;let e=this.getContext();e.drawingBufferColorSpace=ye._getDrawingBufferColorSpace(t),e.unpackColorSpace=ye._getUnpackColorSpace()}};var yg={type:"change"},hd={type:"start"},Mg={type:"end"},Gc=new er,vg=new Xn,Ob=Math.cos(70*$u.DEG2RAD),yn=new W,Kn=2*Math.PI,Ee={NONE:-1,ROTATE:0,DOLLY:1,PAN:2,TOUCH_ROTATE:3,TOUCH_PAN:4,TOUCH_DOLLY_PAN:5,TOUCH_DOLLY_ROTATE:6},cd=1e-6,Hc=class extends ia{constructor(t,e=null){super(t,e),this.state=Ee.NONE,this.target=new W,this.cursor=new W,this.minDistance=0,this.maxDistance=1/0,this.minZoom=0,this.maxZoom=1/0,this.minTargetRadius=0,this.maxTargetRadius=1/0,this.minPolarAngle=0,this.maxPolarAngle=Math.PI,this.minAzimuthAngle=-1/0,this.maxAzimuthAngle=1/0,this.enableDamping=!1,this.dampingFactor=.05,this.enableZoom=!0,this.zoomSpeed=1,this.enableRotate=!0,this.rotateSpeed=1,this.keyRotateSpeed=1,this.enablePan=!0,this.panSpeed=1,this.screenSpacePanning=!0,this.keyPanSpeed=7,this.zoomToCursor=!1,this.autoRotate=!1,this.autoRotateSpeed=2,this.keys={LEFT:"ArrowLeft",UP:"ArrowUp",RIGHT:"ArrowRight",BOTTOM:"ArrowDown"},this.mouseButtons={LEFT:Os.ROTATE,MIDDLE:Os.DOLLY,RIGHT:Os.PAN},this.touches={ONE:Bs.ROTATE,TWO:Bs.DOLLY_PAN},this.target0=this.target.clone(),this.position0=this.object.position.clone(),this.zoom0=this.object.zoom,this._cursorStyle="auto",this._domElementKeyEvents=null,this._lastPosition=new W,this._lastQuaternion=new li,this._lastTargetPosition=new W,this._quat=new li().setFromUnitVectors(t.up,new W(0,1,0)),this._quatInverse=this._quat.clone().invert(),this._spherical=new to,this._sphericalDelta=new to,this._scale=1,this._panOffset=new W,this._rotateStart=new ie,this._rotateEnd=new ie,this._rotateDelta=new ie,this._panStart=new ie,this._panEnd=new ie,this._panDelta=new ie,this._dollyStart=new ie,this._dollyEnd=new ie,this._dollyDelta=new ie,this._dollyDirection=new W,this._mouse=new ie,this._performCursorZoom=!1,this._pointers=[],this._pointerPositions={},this._controlActive=!1,this._onPointerMove=kb.bind(this),this._onPointerDown=Bb.bind(this),this._onPointerUp=zb.bind(this),this._onContextMenu=Yb.bind(this),this._onMouseWheel=Hb.bind(this),this._onKeyDown=Wb.bind(this),this._onTouchStart=Xb.bind(this),this._onTouchMove=qb.bind(this),this._onMouseDown=Vb.bind(this),this._onMouseMove=Gb.bind(this),this._interceptControlDown=$b.bind(this),this._interceptControlUp=Zb.bind(this),this.domElement!==null&&this.connect(this.domElement),this.update()}set cursorStyle(t){this._cursorStyle=t,t==="grab"?this.domElement.style.cursor="grab":this.domElement.style.cursor="auto"}get cursorStyle(){return this._cursorStyle}connect(t){super.connect(t),this.domElement.addEventListener("pointerdown",this._onPointerDown),this.domElement.addEventListener("pointercancel",this._onPointerUp),this.domElement.addEventListener("contextmenu",this._onContextMenu),this.domElement.addEventListener("wheel",this._onMouseWheel,{passive:!1}),this.domElement.ownerDocument.addEventListener("keydown",this._interceptControlDown,{passive:!0,capture:!0}),this.domElement.style.touchAction="none"}disconnect(){this.state=Ee.NONE,this.domElement.removeEventListener("pointerdown",this._onPointerDown),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.domElement.removeEventListener("pointercancel",this._onPointerUp),this.domElement.removeEventListener("wheel",this._onMouseWheel),this.domElement.removeEventListener("contextmenu",this._onContextMenu),this.stopListenToKeyEvents(),this.domElement.ownerDocument.removeEventListener("keydown",this._interceptControlDown,{capture:!0}),this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{capture:!0}),this._controlActive=!1,this._pointers.length=0,this._pointerPositions={},this.domElement.style.touchAction="",this.domElement.style.cursor="auto"}dispose(){this.disconnect()}getPolarAngle(){return this._spherical.phi}getAzimuthalAngle(){return this._spherical.theta}getDistance(){return this.object.position.distanceTo(this.target)}listenToKeyEvents(t){t.addEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=t}stopListenToKeyEvents(){this._domElementKeyEvents!==null&&(this._domElementKeyEvents.removeEventListener("keydown",this._onKeyDown),this._domElementKeyEvents=null)}saveState(){this.target0.copy(this.target),this.position0.copy(this.object.position),this.zoom0=this.object.zoom}reset(){this.target.copy(this.target0),this.object.position.copy(this.position0),this.object.zoom=this.zoom0,this.object.updateProjectionMatrix(),this.dispatchEvent(yg),this.update(),this.state=Ee.NONE}pan(t,e){this._pan(t,e),this.update()}dollyIn(t){this._dollyIn(t),this.update()}dollyOut(t){this._dollyOut(t),this.update()}rotateLeft(t){this._rotateLeft(t),this.update()}rotateUp(t){this._rotateUp(t),this.update()}update(t=null){let e=this.object.position;yn.copy(e).sub(this.target),yn.applyQuaternion(this._quat),this._spherical.setFromVector3(yn),this.autoRotate&&this.state===Ee.NONE&&this._rotateLeft(this._getAutoRotationAngle(t)),this.enableDamping?(this._spherical.theta+=this._sphericalDelta.theta*this.dampingFactor,this._spherical.phi+=this._sphericalDelta.phi*this.dampingFactor):(this._spherical.theta+=this._sphericalDelta.theta,this._spherical.phi+=this._sphericalDelta.phi);let n=this.minAzimuthAngle,s=this.maxAzimuthAngle;isFinite(n)&&isFinite(s)&&(n<-Math.PI?n+=Kn:n>Math.PI&&(n-=Kn),s<-Math.PI?s+=Kn:s>Math.PI&&(s-=Kn),n<=s?this._spherical.theta=Math.max(n,Math.min(s,this._spherical.theta)):this._spherical.theta=this._spherical.theta>(n+s)/2?Math.max(n,this._spherical.theta):Math.min(s,this._spherical.theta)),this._spherical.phi=Math.max(this.minPolarAngle,Math.min(this.maxPolarAngle,this._spherical.phi)),this._spherical.makeSafe(),this.enableDamping===!0?this.target.addScaledVector(this._panOffset,this.dampingFactor):this.target.add(this._panOffset),this.target.sub(this.cursor),this.target.clampLength(this.minTargetRadius,this.maxTargetRadius),this.target.add(this.cursor);let r=!1;if(this.zoomToCursor&&this._performCursorZoom||this.object.isOrthographicCamera)this._spherical.radius=this._clampDistance(this._spherical.radius);else{let o=this._spherical.radius;this._spherical.radius=this._clampDistance(this._spherical.radius*this._scale),r=o!=this._spherical.radius}if(yn.setFromSpherical(this._spherical),yn.applyQuaternion(this._quatInverse),e.copy(this.target).add(yn),this.object.lookAt(this.target),this.enableDamping===!0?(this._sphericalDelta.theta*=1-this.dampingFactor,this._sphericalDelta.phi*=1-this.dampingFactor,this._panOffset.multiplyScalar(1-this.dampingFactor)):(this._sphericalDelta.set(0,0,0),this._panOffset.set(0,0,0)),this.zoomToCursor&&this._performCursorZoom){let o=null;if(this.object.isPerspectiveCamera){let a=yn.length();o=this._clampDistance(a*this._scale);let c=a-o;this.object.position.addScaledVector(this._dollyDirection,c),this.object.updateMatrixWorld(),r=!!c}else if(this.object.isOrthographicCamera){let a=new W(this._mouse.x,this._mouse.y,0);a.unproject(this.object);let c=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),this.object.updateProjectionMatrix(),r=c!==this.object.zoom;let l=new W(this._mouse.x,this._mouse.y,0);l.unproject(this.object),this.object.position.sub(l).add(a),this.object.updateMatrixWorld(),o=yn.length()}else console.warn("WARNING: OrbitControls.js encountered an unknown camera type - zoom to cursor disabled."),this.zoomToCursor=!1;o!==null&&(this.screenSpacePanning?this.target.set(0,0,-1).transformDirection(this.object.matrix).multiplyScalar(o).add(this.object.position):(Gc.origin.copy(this.object.position),Gc.direction.set(0,0,-1).transformDirection(this.object.matrix),Math.abs(this.object.up.dot(Gc.direction))<Ob?this.object.lookAt(this.target):(vg.setFromNormalAndCoplanarPoint(this.object.up,this.target),Gc.intersectPlane(vg,this.target))))}else if(this.object.isOrthographicCamera){let o=this.object.zoom;this.object.zoom=Math.max(this.minZoom,Math.min(this.maxZoom,this.object.zoom/this._scale)),o!==this.object.zoom&&(this.object.updateProjectionMatrix(),r=!0)}return this._scale=1,this._performCursorZoom=!1,r||this._lastPosition.distanceToSquared(this.object.position)>cd||8*(1-this._lastQuaternion.dot(this.object.quaternion))>cd||this._lastTargetPosition.distanceToSquared(this.target)>cd?(this.dispatchEvent(yg),this._lastPosition.copy(this.object.position),this._lastQuaternion.copy(this.object.quaternion),this._lastTargetPosition.copy(this.target),!0):!1}_getAutoRotationAngle(t){return t!==null?Kn/60*this.autoRotateSpeed*t:Kn/60/60*this.autoRotateSpeed}_getZoomScale(t){let e=Math.abs(t*.01);return Math.pow(.95,this.zoomSpeed*e)}_rotateLeft(t){this._sphericalDelta.theta-=t}_rotateUp(t){this._sphericalDelta.phi-=t}_panLeft(t,e){yn.setFromMatrixColumn(e,0),yn.multiplyScalar(-t),this._panOffset.add(yn)}_panUp(t,e){this.screenSpacePanning===!0?yn.setFromMatrixColumn(e,1):(yn.setFromMatrixColumn(e,0),yn.crossVectors(this.object.up,yn)),yn.multiplyScalar(t),this._panOffset.add(yn)}_pan(t,e){let n=this.domElement;if(this.object.isPerspectiveCamera){let s=this.object.position;yn.copy(s).sub(this.target);let r=yn.length();r*=Math.tan(this.object.fov/2*Math.PI/180),this._panLeft(2*t*r/n.clientHeight,this.object.matrix),this._panUp(2*e*r/n.clientHeight,this.object.matrix)}else this.object.isOrthographicCamera?(this._panLeft(t*(this.object.right-this.object.left)/this.object.zoom/n.clientWidth,this.object.matrix),this._panUp(e*(this.object.top-this.object.bottom)/this.object.zoom/n.clientHeight,this.object.matrix)):(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - pan disabled."),this.enablePan=!1)}_dollyOut(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale/=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_dollyIn(t){this.object.isPerspectiveCamera||this.object.isOrthographicCamera?this._scale*=t:(console.warn("WARNING: OrbitControls.js encountered an unknown camera type - dolly/zoom disabled."),this.enableZoom=!1)}_updateZoomParameters(t,e){if(!this.zoomToCursor)return;this._performCursorZoom=!0;let n=this.domElement.getBoundingClientRect(),s=t-n.left,r=e-n.top,o=n.width,a=n.height;this._mouse.x=s/o*2-1,this._mouse.y=-(r/a)*2+1,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()}_clampDistance(t){return Math.max(this.minDistance,Math.min(this.maxDistance,t))}_handleMouseDownRotate(t){this._rotateStart.set(t.clientX,t.clientY)}_handleMouseDownDolly(t){this._updateZoomParameters(t.clientX,t.clientY),this._dollyStart.set(t.clientX,t.clientY)}_handleMouseDownPan(t){this._panStart.set(t.clientX,t.clientY)}_handleMouseMoveRotate(t){this._rotateEnd.set(t.clientX,t.clientY),this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Kn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Kn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd),this.update()}_handleMouseMoveDolly(t){this._dollyEnd.set(t.clientX,t.clientY),this._dollyDelta.subVectors(this._dollyEnd,this._dollyStart),this._dollyDelta.y>0?this._dollyOut(this._getZoomScale(this._dollyDelta.y)):this._dollyDelta.y<0&&this._dollyIn(this._getZoomScale(this._dollyDelta.y)),this._dollyStart.copy(this._dollyEnd),this.zoomToCursor&&(this._performCursorZoom=!0,this._dollyDirection.set(this._mouse.x,this._mouse.y,1).unproject(this.object).sub(this.object.position).normalize()),this.update()}_handleMouseMovePan(t){this._panEnd.set(t.clientX,t.clientY),this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd),this.update()}_handleMouseWheel(t){this._updateZoomParameters(t.clientX,t.clientY),t.deltaY<0?this._dollyIn(this._getZoomScale(t.deltaY)):t.deltaY>0&&this._dollyOut(this._getZoomScale(t.deltaY)),this.update()}_handleKeyDown(t){let e=!1;switch(t.code){case this.keys.UP:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,this.keyPanSpeed),e=!0;break;case this.keys.BOTTOM:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateUp(-Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(0,-this.keyPanSpeed),e=!0;break;case this.keys.LEFT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(this.keyPanSpeed,0),e=!0;break;case this.keys.RIGHT:t.ctrlKey||t.metaKey||t.shiftKey?this.enableRotate&&this._rotateLeft(-Kn*this.keyRotateSpeed/this.domElement.clientHeight):this.enablePan&&this._pan(-this.keyPanSpeed,0),e=!0;break}e&&(t.preventDefault(),this.update())}_handleTouchStartRotate(t){if(this._pointers.length===1)this._rotateStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._rotateStart.set(n,s)}}_handleTouchStartPan(t){if(this._pointers.length===1)this._panStart.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panStart.set(n,s)}}_handleTouchStartDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyStart.set(0,r)}_handleTouchStartDollyPan(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enablePan&&this._handleTouchStartPan(t)}_handleTouchStartDollyRotate(t){this.enableZoom&&this._handleTouchStartDolly(t),this.enableRotate&&this._handleTouchStartRotate(t)}_handleTouchMoveRotate(t){if(this._pointers.length==1)this._rotateEnd.set(t.pageX,t.pageY);else{let n=this._getSecondPointerPosition(t),s=.5*(t.pageX+n.x),r=.5*(t.pageY+n.y);this._rotateEnd.set(s,r)}this._rotateDelta.subVectors(this._rotateEnd,this._rotateStart).multiplyScalar(this.rotateSpeed);let e=this.domElement;this._rotateLeft(Kn*this._rotateDelta.x/e.clientHeight),this._rotateUp(Kn*this._rotateDelta.y/e.clientHeight),this._rotateStart.copy(this._rotateEnd)}_handleTouchMovePan(t){if(this._pointers.length===1)this._panEnd.set(t.pageX,t.pageY);else{let e=this._getSecondPointerPosition(t),n=.5*(t.pageX+e.x),s=.5*(t.pageY+e.y);this._panEnd.set(n,s)}this._panDelta.subVectors(this._panEnd,this._panStart).multiplyScalar(this.panSpeed),this._pan(this._panDelta.x,this._panDelta.y),this._panStart.copy(this._panEnd)}_handleTouchMoveDolly(t){let e=this._getSecondPointerPosition(t),n=t.pageX-e.x,s=t.pageY-e.y,r=Math.sqrt(n*n+s*s);this._dollyEnd.set(0,r),this._dollyDelta.set(0,Math.pow(this._dollyEnd.y/this._dollyStart.y,this.zoomSpeed)),this._dollyOut(this._dollyDelta.y),this._dollyStart.copy(this._dollyEnd);let o=(t.pageX+e.x)*.5,a=(t.pageY+e.y)*.5;this._updateZoomParameters(o,a)}_handleTouchMoveDollyPan(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enablePan&&this._handleTouchMovePan(t)}_handleTouchMoveDollyRotate(t){this.enableZoom&&this._handleTouchMoveDolly(t),this.enableRotate&&this._handleTouchMoveRotate(t)}_addPointer(t){this._pointers.push(t.pointerId)}_removePointer(t){delete this._pointerPositions[t.pointerId];for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId){this._pointers.splice(e,1);return}}_isTrackingPointer(t){for(let e=0;e<this._pointers.length;e++)if(this._pointers[e]==t.pointerId)return!0;return!1}_trackPointer(t){let e=this._pointerPositions[t.pointerId];e===void 0&&(e=new ie,this._pointerPositions[t.pointerId]=e),e.set(t.pageX,t.pageY)}_getSecondPointerPosition(t){let e=t.pointerId===this._pointers[0]?this._pointers[1]:this._pointers[0];return this._pointerPositions[e]}_customWheelEvent(t){let e=t.deltaMode,n={clientX:t.clientX,clientY:t.clientY,deltaY:t.deltaY};switch(e){case 1:n.deltaY*=16;break;case 2:n.deltaY*=100;break}return t.ctrlKey&&!this._controlActive&&(n.deltaY*=10),n}};function Bb(i){this.enabled!==!1&&(this._pointers.length===0&&(this.domElement.setPointerCapture(i.pointerId),this.domElement.ownerDocument.addEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.addEventListener("pointerup",this._onPointerUp)),!this._isTrackingPointer(i)&&(this._addPointer(i),i.pointerType==="touch"?this._onTouchStart(i):this._onMouseDown(i),this._cursorStyle==="grab"&&(this.domElement.style.cursor="grabbing")))}function kb(i){this.enabled!==!1&&(i.pointerType==="touch"?this._onTouchMove(i):this._onMouseMove(i))}function zb(i){switch(this._removePointer(i),this._pointers.length){case 0:this.domElement.releasePointerCapture(i.pointerId),this.domElement.ownerDocument.removeEventListener("pointermove",this._onPointerMove),this.domElement.ownerDocument.removeEventListener("pointerup",this._onPointerUp),this.dispatchEvent(Mg),this.state=Ee.NONE,this._cursorStyle==="grab"&&(this.domElement.style.cursor="grab");break;case 1:let t=this._pointers[0],e=this._pointerPositions[t];this._onTouchStart({pointerId:t,pageX:e.x,pageY:e.y});break}}function Vb(i){let t;switch(i.button){case 0:t=this.mouseButtons.LEFT;break;case 1:t=this.mouseButtons.MIDDLE;break;case 2:t=this.mouseButtons.RIGHT;break;default:t=-1}switch(t){case Os.DOLLY:if(this.enableZoom===!1)return;this._handleMouseDownDolly(i),this.state=Ee.DOLLY;break;case Os.ROTATE:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ee.PAN}else{if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ee.ROTATE}break;case Os.PAN:if(i.ctrlKey||i.metaKey||i.shiftKey){if(this.enableRotate===!1)return;this._handleMouseDownRotate(i),this.state=Ee.ROTATE}else{if(this.enablePan===!1)return;this._handleMouseDownPan(i),this.state=Ee.PAN}break;default:this.state=Ee.NONE}this.state!==Ee.NONE&&this.dispatchEvent(hd)}function Gb(i){switch(this.state){case Ee.ROTATE:if(this.enableRotate===!1)return;this._handleMouseMoveRotate(i);break;case Ee.DOLLY:if(this.enableZoom===!1)return;this._handleMouseMoveDolly(i);break;case Ee.PAN:if(this.enablePan===!1)return;this._handleMouseMovePan(i);break}}function Hb(i){this.enabled===!1||this.enableZoom===!1||this.state!==Ee.NONE||(i.preventDefault(),this.dispatchEvent(hd),this._handleMouseWheel(this._customWheelEvent(i)),this.dispatchEvent(Mg))}function Wb(i){this.enabled!==!1&&this._handleKeyDown(i)}function Xb(i){switch(this._trackPointer(i),this._pointers.length){case 1:switch(this.touches.ONE){case Bs.ROTATE:if(this.enableRotate===!1){this.state=Ee.NONE;break}this._handleTouchStartRotate(i),this.state=Ee.TOUCH_ROTATE;break;case Bs.PAN:if(this.enablePan===!1){this.state=Ee.NONE;break}this._handleTouchStartPan(i),this.state=Ee.TOUCH_PAN;break;default:this.state=Ee.NONE}break;case 2:switch(this.touches.TWO){case Bs.DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchStartDollyPan(i),this.state=Ee.TOUCH_DOLLY_PAN;break;case Bs.DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchStartDollyRotate(i),this.state=Ee.TOUCH_DOLLY_ROTATE;break;default:this.state=Ee.NONE}break;default:this.state=Ee.NONE}this.state!==Ee.NONE&&this.dispatchEvent(hd)}function qb(i){switch(this._trackPointer(i),this.state){case Ee.TOUCH_ROTATE:if(this.enableRotate===!1)return;this._handleTouchMoveRotate(i),this.update();break;case Ee.TOUCH_PAN:if(this.enablePan===!1)return;this._handleTouchMovePan(i),this.update();break;case Ee.TOUCH_DOLLY_PAN:if(this.enableZoom===!1&&this.enablePan===!1)return;this._handleTouchMoveDollyPan(i),this.update();break;case Ee.TOUCH_DOLLY_ROTATE:if(this.enableZoom===!1&&this.enableRotate===!1)return;this._handleTouchMoveDollyRotate(i),this.update();break;default:this.state=Ee.NONE}}function Yb(i){this.enabled!==!1&&i.preventDefault()}function $b(i){i.key==="Control"&&(this._controlActive=!0,this.domElement.ownerDocument.addEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}function Zb(i){i.key==="Control"&&(this._controlActive=!1,this.domElement.ownerDocument.removeEventListener("keyup",this._interceptControlUp,{passive:!0,capture:!0}))}var ud=Math.PI/36,Jb=.06,Sg=1.15,bg=.02;function wg(i,t,e){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let{target:n}=e,s=t.position.clone().sub(n),r={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,1],ArrowDown:[0,-1]}[i.key];if(r){let[o,a]=r,c=new W().setFromMatrixColumn(t.matrix,0);if(i.shiftKey){let l=new W().setFromMatrixColumn(t.matrix,1),u=c.multiplyScalar(o).addScaledVector(l,a).multiplyScalar(Jb*s.length());n.add(u)}else{s.applyAxisAngle(t.up,o*ud);let l=Math.min(Math.PI-bg,Math.max(bg,s.angleTo(t.up)-a*ud));s.applyAxisAngle(c.applyAxisAngle(t.up,o*ud),l-s.angleTo(t.up))}}else if(i.key==="+"||i.key==="="||i.key==="-"){let o=s.length()*(i.key==="-"?Sg:1/Sg);s.setLength(Math.min(e.maxDistance,Math.max(e.minDistance,o)))}else return!1;return t.position.copy(n).add(s),e.update(),!0}function dd(i,t){let e=t;e._quat?.setFromUnitVectors(i.up,new W(0,1,0)),e._quat&&e._quatInverse?.copy(e._quat).invert()}var tw=["quiet","within","near","broken","waived","near","within"],Wc=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;this.renderer=new kc({antialias:!0,alpha:!0}),this.soft=ew(this.renderer),this.renderer.setPixelRatio(this.soft?1:Math.min(2,devicePixelRatio)),this.renderer.localClippingEnabled=!0,t.append(this.renderer.domElement,this.labelLayer),this.renderer.domElement.setAttribute("aria-hidden","true"),this.controls=new Hc(this.camera,this.renderer.domElement),this.controls.enableDamping=!1,this.controls.addEventListener("change",()=>this.ask()),this.controls.addEventListener("start",()=>{this.flight++}),t.addEventListener("keydown",r=>{if(r.target===t){if(r.key==="Home")this.alongLight();else if(wg(r,this.camera,this.controls))this.flight++;else return;r.preventDefault(),this.ask()}});let s=new ea(16777215,1.9);s.position.set(-.4,.7,1),this.camera.add(s),this.stage.add(this.camera,new na(16777215,1.35),this.seam,this.marker);for(let r of e.meshes)this.addPart(r);this.measure(),this.buildSeam(),this.alongLight(!1),new ResizeObserver(()=>this.fit()).observe(t),this.fit(),this.show(n.place)}host;atlas;walk;renderer;stage=new Vo;camera=new qn(32,1,.1,1e4);controls;parts=new Map;seam=new Ti;marker=new Ti;labels=[];labelLayer=$t("div",{class:"scene-labels"});cutPlane=new Xn(new W(1,0,0),0);centre=new W;radius=50;cut=!1;shownJoint=-1;flight=0;waiting=!1;soft;addPart(t){let e=this.roleOf(t.part),n=new Ti,s=nw(t),r=e==="cover",o=new ae(un(r?"cover-solid":e==="base"?"base-solid":"other-solid")),a=new Jo({color:o,side:r?$n:Ri,transparent:r,opacity:r?.3:1,depthWrite:!r,polygonOffset:!0,polygonOffsetFactor:1,polygonOffsetUnits:1}),c=new hs({color:new ae(un(r?"cover-cut":"base-cut")),side:In}),l=new Rn(s,c);l.visible=!1,l.name="inside";let u=new Rn(s,a);u.renderOrder=r?2:0;let h=new Kr(iw(t),new Ds({color:new ae(un("ink")),transparent:!0,opacity:r?.5:.4}));h.renderOrder=r?3:1,n.add(u,l,h),n.userData={role:e},this.parts.set(t.part,n),this.stage.add(n)}roleOf(t){let e=this.walk.joint;return e.cover.includes(t)?"cover":e.base.includes(t)?"base":"other"}measure(){let t=new W(1/0,1/0,1/0),e=new W(-1/0,-1/0,-1/0);for(let n of this.atlas.meshes)for(let s=0;s<n.positions.length;s+=3){let r=new W(n.positions[s],n.positions[s+1],n.positions[s+2]);t.min(r),e.max(r)}for(let n of this.walk.joint.contours)for(let s of Vi(n))t.min(new W(...s)),e.max(new W(...s));this.centre.addVectors(t,e).multiplyScalar(.5),this.radius=Math.max(1,t.distanceTo(e)/2),this.camera.near=this.radius/500,this.camera.far=this.radius*40,this.controls.minDistance=this.radius/60,this.controls.maxDistance=this.radius*12}buildSeam(){this.shownJoint=this.walk.place.joint,this.seam.clear(),this.labels.length=0,hn(this.labelLayer);let{joint:t,facts:e}=this.walk,n=new W(...Zs(t.beam).toward);for(let r of t.contours){let o=Vi(r),a=(r.summary.rib_width?.median??1.5)*.36,c=new Uint8Array(o.length);for(let[l,u,h]of e.worst[r.id]??[])c.fill(h,l,u+1);this.seam.add(sw(o.map(l=>new W(...l)),r.stations.u.map(l=>new W(...l)),n,a,c,r.closed))}let s=[];for(let r of this.atlas.payload.findings){if(r.joint!==t.id||r.station===null||r.severity==="note")continue;let o=t.contours.find(v=>v.id===r.contour);if(!o)continue;let a=new W(...Vi(o)[r.station]),c=new W(...o.stations.u[r.station]),l=s.find(v=>v.at.distanceTo(a)<this.radius/60);if(l){l.findings.push(r),l.numbers.textContent=Ms(l.findings),l.numbers.setAttribute("aria-label",`${l.numbers.textContent}: fly to these findings`);continue}let u=new ae(un(r.waived?"waived":r.severity==="must-fix"?"broken":"near")),h=new On().setFromPoints([a.clone().addScaledVector(c,-this.radius/22),a.clone().addScaledVector(c,this.radius/22)]),d=new Kr(h,new Ds({color:u,depthTest:!1}));d.renderOrder=6,this.seam.add(d);let f=$t("button",{type:"button",class:`scene-label ${r.waived?"waived":r.severity}`,"data-finding":r.n,"aria-label":`${r.n}: fly to ${r.title}`},String(r.n));f.addEventListener("click",()=>this.walk.showFinding(r)),this.labelLayer.append(f);let g=a.clone().addScaledVector(c,this.radius/16);this.labels.push({element:f,at:g}),s.push({at:a,numbers:f,findings:[r]})}}show(t,e=!1){t.joint!==this.shownJoint&&this.buildSeam();let{contour:n,joint:s}=this.walk,r=new W(...Vi(n)[t.station]),o=new W(...n.stations.u[t.station]),a=new W(...Zs(s.beam).toward),c=new W().crossVectors(a,o).normalize();if(this.buildMarker(r,o,a,c),this.cutPlane.setFromNormalAndCoplanarPoint(c.clone().negate(),r),e){let l=r.clone().addScaledVector(o,this.radius*.22).addScaledVector(a,this.radius*.2).addScaledVector(c,this.radius*.34);this.fly(l,r,a)}this.ask()}buildMarker(t,e,n,s){for(let h of[...this.marker.children])Eg(h);this.marker.clear();let r=Math.max(4,(this.walk.contour.summary.rib_width?.median??1.5)*3.2),o=(h,d)=>t.clone().addScaledVector(e,h*r).addScaledVector(n,d*r),a=new ae(un("walker")),c=new Xo(new On().setFromPoints([o(-1,-1),o(1,-1),o(1,1),o(-1,1)]),new Ds({color:a,depthTest:!1}));c.renderOrder=8;let l=new Rn(new nr(2*r,2*r),new hs({color:a,transparent:!0,opacity:this.cut?0:.12,side:$n,depthWrite:!1}));l.position.copy(t),l.up.copy(n),l.lookAt(t.clone().add(s)),l.renderOrder=7;let u=new Rn(new Zo(r*.08,16,12),new hs({color:a,depthTest:!1}));u.position.copy(t),u.renderOrder=9,this.marker.add(c,l,u),this.host.dataset.marker=[t.x,t.y,t.z].map(h=>h.toFixed(3)).join(" ")}fly(t,e,n){let s=++this.flight,r=this.camera.position.clone(),o=this.controls.target.clone(),a=this.camera.up.clone(),c=gp()||this.soft?0:550,l=performance.now(),u=h=>{if(s!==this.flight)return;let d=c?Math.min(1,(h-l)/c):1,f=d*d*(3-2*d);this.camera.position.lerpVectors(r,t,f),this.controls.target.lerpVectors(o,e,f),this.camera.up.lerpVectors(a,n,f).normalize(),dd(this.camera,this.controls),this.controls.update(),this.ask(),d<1&&requestAnimationFrame(u)};u(l)}distance(){let t=Math.tan(this.camera.fov*Math.PI/360);return this.radius*1.02/Math.min(t,t*Math.max(.3,this.camera.aspect))}alongLight(t=!0){let e=Zs(this.walk.joint.beam),n=this.centre.clone().addScaledVector(new W(...e.toward),this.distance());this.go(n,new W(...e.up),t)}aslant(t=!0){let e=Zs(this.walk.joint.beam),n=new W(...e.toward).multiplyScalar(.75).addScaledVector(new W(...e.right),.45).addScaledVector(new W(...e.up),-.75).normalize();this.go(this.centre.clone().addScaledVector(n,this.distance()),new W(...e.toward),t)}go(t,e,n){if(n){this.fly(t,this.centre.clone(),e);return}this.camera.up.copy(e),this.camera.position.copy(t),this.controls.target.copy(this.centre),dd(this.camera,this.controls),this.controls.update(),this.ask()}flyToMarker(){this.show(this.walk.place,!0)}setCut(t){this.cut=t;let e=t?[this.cutPlane]:[];for(let n of this.parts.values())n.traverse(s=>{let r=s.material;if(r){if(r.clippingPlanes=e,s.name==="inside")s.visible=t;else if(s instanceof Rn&&n.userData.role==="cover"){let o=r;o.opacity=t?1:.3,o.transparent=!t,o.depthWrite=t,o.side=t?Ri:$n}r.needsUpdate=!0}});this.seam.traverse(n=>{let s=n.material;s&&n instanceof Rn&&(s.clippingPlanes=e)}),this.show(this.walk.place)}setVisible(t,e){let n=this.parts.get(t);n&&(n.visible=e),this.ask()}get partIds(){return[...this.parts.keys()]}retheme(){for(let[t,e]of this.parts)this.stage.remove(e),e.traverse(Eg),this.parts.delete(t);for(let t of this.atlas.meshes)this.addPart(t);this.buildSeam(),this.setCut(this.cut)}fit(){let t=this.host.getBoundingClientRect();t.width<10||t.height<10||(this.renderer.setSize(t.width,t.height),this.camera.aspect=t.width/t.height,this.camera.updateProjectionMatrix(),this.ask())}ask(){this.waiting||(this.waiting=!0,requestAnimationFrame(()=>{this.waiting=!1,this.renderer.render(this.stage,this.camera);let t=this.host.getBoundingClientRect();for(let{element:e,at:n}of this.labels){let s=n.clone().project(this.camera),r=s.z<1&&Math.abs(s.x)<1&&Math.abs(s.y)<1;e.hidden=!r,r&&(e.style.transform=`translate(${(s.x+1)/2*t.width}px, ${(1-s.y)/2*t.height}px) translate(-50%, -50%)`)}this.host.dataset.eye=this.camera.position.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.target=this.controls.target.toArray().map(e=>e.toFixed(3)).join(" "),this.host.dataset.drawn=String(Number(this.host.dataset.drawn??0)+1)}))}};function ew(i){let t=i.getContext(),e=t.getExtension("WEBGL_debug_renderer_info"),n=e?String(t.getParameter(e.UNMASKED_RENDERER_WEBGL)):"";return/swiftshader|llvmpipe|software/i.test(n)}function Eg(i){let t=i;t.geometry?.dispose(),t.material&&t.material.dispose()}function Tg(i){let t=i.length/3,e=1024;for(;e<t*2;)e*=2;let n=new Int32Array(e).fill(-1),s=new Uint32Array(t),r=o=>Math.round(i[o]*1e4);for(let o=0;o<t;o++){let[a,c,l]=[r(3*o),r(3*o+1),r(3*o+2)],u=(Math.imul(a,73856093)^Math.imul(c,19349663)^Math.imul(l,83492791))&e-1;for(;;u=u+1&e-1){let h=n[u];if(h<0){n[u]=o,s[o]=o;break}if(r(3*h)===a&&r(3*h+1)===c&&r(3*h+2)===l){s[o]=h;break}}}return s}function nw(i){let{positions:t,triangles:e,face:n}=i,s=Tg(t),r=t.length/3,o=new Map,a=new Uint32Array(e.length),c=[];for(let u=0;u<e.length;u++){let h=s[e[u]],d=(n[Math.floor(u/3)]+1)*r+h,f=o.get(d);f===void 0&&(f=c.length/3,o.set(d,f),c.push(t[3*h],t[3*h+1],t[3*h+2])),a[u]=f}let l=new On;return l.setAttribute("position",new Un(new Float32Array(c),3)),l.setIndex(new Un(a,1)),l.computeVertexNormals(),l}function iw(i){let{positions:t,triangles:e,face:n}=i,s=Tg(t),r=t.length/3,o=new Map;for(let l=0;l<e.length;l++){let[u,h]=[s[e[l]],s[e[l%3===2?l-2:l+1]]],d=u<h?u*r+h:h*r+u,f=n[Math.floor(l/3)],g=o.get(d);g===void 0?o.set(d,f):g===f&&o.set(d,-2)}let a=[];for(let[l,u]of o){if(u===-2)continue;let h=Math.floor(l/r),d=l%r;a.push(t[3*h],t[3*h+1],t[3*h+2],t[3*d],t[3*d+1],t[3*d+2])}let c=new On;return c.setAttribute("position",new Un(new Float32Array(a),3)),c}function sw(i,t,e,n,s,r){let a=[],c=[],l=[],u=tw.map(g=>new ae(un(g)));i.forEach((g,v)=>{let p=s[v]===3||s[v]===4?1.5:s[v]===5?1.3:s[v]===2?1.1:.85,m=u[s[v]];for(let y=0;y<8;y++){let A=y/8*2*Math.PI,M=g.clone().addScaledVector(t[v],Math.cos(A)*n*p).addScaledVector(e,Math.sin(A)*n*p);a.push(M.x,M.y,M.z),c.push(m.r,m.g,m.b)}});let h=r?i.length:i.length-1;for(let g=0;g<h;g++){let v=(g+1)%i.length;for(let p=0;p<8;p++){let m=(p+1)%8;l.push(g*8+p,v*8+p,v*8+m,g*8+p,v*8+m,g*8+m)}}let d=new On;d.setAttribute("position",new Un(new Float32Array(a),3)),d.setAttribute("color",new Un(new Float32Array(c),3)),d.setIndex(l);let f=new Rn(d,new hs({vertexColors:!0,side:$n}));return f.renderOrder=4,f}var Xc=class{constructor(t){this.payload=t}payload;place={joint:0,contour:0,station:0};listeners=[];get joint(){return this.payload.joints[this.place.joint]}get facts(){return this.payload.facts[this.place.joint]}get contour(){return this.joint.contours[this.place.contour]}get s(){return this.contour.stations.s[this.place.station]}listen(t){this.listeners.push(t)}go(t,e=""){let n=t.joint??this.place.joint,s=this.payload.joints[n].contours,r=Math.min(t.contour??(t.joint===void 0?this.place.contour:0),s.length-1),o=s[r].stations.s.length,a=Math.max(0,Math.min(o-1,t.station??0));this.place={joint:n,contour:r,station:a};for(let c of this.listeners)c(this.place,e)}step(t,e="keys"){let n=this.contour.stations.s.length,s=this.place.station+t,r=this.place.contour;this.contour.closed?s=(s%n+n)%n:s<0&&r>0?(r-=1,s=this.joint.contours[r].stations.s.length-1):s>=n&&r<this.joint.contours.length-1&&(r+=1,s=0),this.go({contour:r,station:s},e)}stretches(t=this.place.joint){let e=this.payload.joints[t].contours,n=e.reduce((a,c)=>a+c.length_mm,0),s=e.length>1?n*.03:0,r=0;return{stretches:e.map((a,c)=>{let l={contour:c,start:r,length:a.length_mm};return r+=a.length_mm+s,l}),length:r-s}}get unrolled(){return this.stretches().stretches[this.place.contour].start+this.s}at(t){let{stretches:e}=this.stretches(),n={contour:0,station:0},s=1/0;for(let r of e){let o=Math.max(0,Math.min(r.length,t-r.start)),a=Math.abs(t-r.start-o);a>=s||(s=a,n={contour:r.contour,station:rw(this.joint.contours[r.contour].stations.s,o)})}return n}showFinding(t,e="finding"){if(t.contour===null||t.station===null)return;let n=this.payload.joints.findIndex(r=>r.id===t.joint),s=this.payload.joints[n].contours.findIndex(r=>r.id===t.contour);this.go({joint:n,contour:s,station:t.station},e)}neighbourFinding(t){let{stretches:e}=this.stretches(),n=this.unrolled,s=this.payload.findings.filter(a=>a.joint===this.joint.id&&a.station!==null).map(a=>{let c=this.joint.contours.findIndex(l=>l.id===a.contour);return{finding:a,at:e[c].start+this.joint.contours[c].stations.s[a.station]}}).sort((a,c)=>a.at-c.at||a.finding.n-c.finding.n);if(!s.length)return null;let r=s.filter(a=>t>0?a.at>n+1e-6:a.at<n-1e-6);return(t>0?r[0]??s[0]:r.at(-1)??s.at(-1)).finding}findingsHere(t=this.place){let e=this.payload.joints[t.joint],n=e.contours[t.contour],s=n.stations.s[t.station];return this.payload.findings.filter(r=>r.joint===e.id&&r.contour===n.id&&ga(r,s))}};function ga(i,t){let{from_s:e,to_s:n}=i;return e===null||n===null?!1:e<=n?t>=e-1e-6&&t<=n+1e-6:t>=e-1e-6||t<=n+1e-6}function rw(i,t){let e=0,n=i.length-1;for(;e<n;){let s=e+n>>1;i[s]<t?e=s+1:n=s}return e>0&&t-i[e-1]<i[e]-t?e-1:e}function Pg(i){let t=new Map;i.owner.forEach((n,s)=>{t.has(n)||t.set(n,[]),t.get(n).push(s)});let e=new Map;for(let[n,s]of t)e.set(n,ow(i.segments,s));return e}function ow(i,t){let e=[],n=new Map,s=(h,d)=>{let[f,g]=[Math.round(h/.001),Math.round(d/.001)];for(let[v,p]of[[f,g],[f+1,g],[f-1,g],[f,g+1],[f,g-1]]){let m=n.get(`${v},${p}`);if(m!==void 0&&Math.hypot(e[m][0]-h,e[m][1]-d)<=.001)return m}return e.push([h,d]),n.set(`${f},${g}`,e.length-1),e.length-1},r=new Map,o=(h,d,f)=>{r.has(h)||r.set(h,[]),r.get(h).push([d,f])};for(let h of t){let d=s(i[4*h],i[4*h+1]),f=s(i[4*h+2],i[4*h+3]);d!==f&&(o(d,h,f),o(f,h,d))}let a=new Set,c=h=>{let d=[h];for(let f=h;;){let g=r.get(f)?.find(([v])=>!a.has(v));if(!g||(a.add(g[0]),f=g[1],d.push(f),f===h))return d}},l=[],u=[...r.keys()].sort((h,d)=>(r.get(h).length%2?0:1)-(r.get(d).length%2?0:1));for(let h of u)for(;r.get(h).some(([d])=>!a.has(d));)l.push(c(h).map(d=>e[d]));return aw(l)}function aw(i){let t=i.filter(n=>_a(n)),e=i.filter(n=>!_a(n));for(;e.length;){let n=e.pop();for(let s=!0;s&&!_a(n);){s=!1;let r=n[n.length-1];for(let o=0;o<e.length;o++){let a=e[o];if(fd(r,a[0]))n=[...n,...a];else if(fd(r,a[a.length-1]))n=[...n,...[...a].reverse()];else continue;e.splice(o,1),s=!0;break}}t.push(n)}return t}var fd=(i,t)=>Math.hypot(i[0]-t[0],i[1]-t[1])<=.05,_a=i=>i.length>2&&fd(i[0],i[i.length-1]);function Ag(i,t){let e=[];for(let s of i??[])for(let r=0;r<s.length;r++){let o=s[r],a=s[(r+1)%s.length];o[0]<=t!=a[0]<=t&&e.push(o[1]+(t-o[0])/(a[0]-o[0])*(a[1]-o[1]))}e.sort((s,r)=>s-r);let n=[];for(let s=0;s+1<e.length;s+=2)n.push([e[s],e[s+1]]);return n}var Rg=.01;function Ig(i,t,e,n,s,r){let o=[],a=0;for(let c=0;a<r&&c<2e3;c++){let l=n*(c+.5)*Rg,u=Cg(Ag(t,l),e).map(([p])=>p),d=Cg(Ag(i,l),e).filter(([p])=>p<.5).map(([,p])=>p);if(!u.length||!d.length){if(a>0)break;continue}let f=Math.max(...d.filter(p=>p<Math.min(...u)+.5)),g=Math.min(...u.filter(p=>p>f-.5));if(!Number.isFinite(f)||!Number.isFinite(g)){if(a>0)break;continue}let v=g-s;if(v>f)o.push({u:l,low:f,high:v,drawn:g}),a+=(v-f)*Rg;else if(a>.02)break}return o}function Cg(i,t){return t>0?i:i.map(([e,n])=>[-n,-e]).reverse()}var lw={left:104,right:112,top:82,bottom:34},cw={left:100,right:104,top:78,bottom:34};function Dg(i,t,e){let n=(d,f)=>t.summary[d]?.max??f,s=n("rib_width",1.5),r=n("rib_height",1.2),o=n("cover_thickness_max",2),a=Math.max(s/2+2.2,s*1.9),c=Math.max(a,Math.min(s/2+e+n("clamp_land",2)+.7,s/2+6)),l=Ng(t),u=o+.35,h={left:l>0?-a:-c,right:l<0?a:c};return i.rib_on==="cover"?{...h,bottom:-Math.max(1.6,r),top:Math.max(u,r+1.2)}:{...h,bottom:-(Math.min(r,3)+1.4),top:u}}var Ng=i=>i.clamp_side==="outer"?1:i.clamp_side==="inner"?-1:0,Ug=(i,t,e)=>i.stations[t]?.[e]??null;function Fg(i){let{joint:t,facts:e,contour:n,station:s,words:r,width:o,height:a,key:c}=i,l=n.stations.s[s],u=o<560?cw:lw,h={x:u.left,y:u.top,w:o-u.left-u.right,h:a-u.top-u.bottom},{frame:d}=i,f=Math.min(h.w/(d.right-d.left),h.h/(d.top-d.bottom)),g=h.w/f-(d.right-d.left),v=h.h/f-(d.top-d.bottom),p=d.left-g/2,m=d.top+v*.15,y=it=>h.x+(it-p)*f,A=it=>h.y+(m-it)*f,M=t.rib_on==="cover"?-1:1,R=new Map;for(let it of i.findings)it.joint===t.id&&it.contour===n.id&&it.severity!=="note"&&ga(it,l)&&!R.has(it.quantity)&&R.set(it.quantity,it);let E=it=>Ug(n,it,s),_=Nt("svg",{class:"section-drawing",viewBox:`0 0 ${ft(o)} ${ft(a)}`,width:ft(o),height:ft(a),role:"img","aria-label":`Section across the seam at s = ${l.toFixed(2)} mm`});_.append(Nt("defs",null,qc(`${c}-base`,"hatch-base",6,45),qc(`${c}-cover`,"hatch-cover",15,-45),qc(`${c}-other`,"hatch-other",5,90),qc(`${c}-trap`,"hatch-trap",4,90),Nt("clipPath",{id:`${c}-window`},Nt("rect",{x:h.x,y:h.y-24,width:h.w,height:h.h+24})),Nt("marker",{id:`${c}-arrow`,viewBox:"0 0 10 6",refX:9.5,refY:3,markerWidth:9,markerHeight:6,orient:"auto-start-reverse"},Nt("path",{d:"M0 0.6 L10 3 L0 5.4 Z",class:"arrow-head"}))));let T=i.sections?.at(s)??null,O=T?Pg(T):new Map,N=Nt("g",{"clip-path":`url(#${c}-window)`});_.append(N);let I=(E("rib_width_top")??E("rib_width"))===null?null:(E("rib_width_top")??E("rib_width"))/2,V=e.drop;I!==null&&N.append(...hw(E,I,M,e,y,A,h.y-24,c));let G=M>0?0:1,D=M>0?0:-(V??0),H=[{side:-1,name:"inner",columns:[]},{side:1,name:"outer",columns:[]}];for(let it of H){let pt=E(`trap_area_${it.name}`);if(pt===null||V===null||!O.size||(it.columns=Ig(O.get(G),O.get(1-G),M,it.side,V,pt),it.columns.length<2))continue;let mt=md(it.columns,Wt=>Wt.low*M+D,Wt=>Wt.high*M+D,y,A),Ft=M>0?md(it.columns,Wt=>Wt.high,Wt=>Wt.drawn,y,A):md(it.columns,Wt=>D-Wt.low,Wt=>-Wt.low,y,A);N.append(Nt("path",{class:"trap-lost",d:Ft}),Nt("path",{class:"trap",d:mt}),Nt("path",{fill:`url(#${c}-trap)`,d:mt}))}let Y=[...O.keys()].sort((it,pt)=>Lg(it)-Lg(pt));for(let it of Y){let pt=it===0?"base":it===1?"cover":"other",mt=O.get(it).map(Ft=>pd(Ft,y,A)).join("");N.append(Nt("path",{class:`body ${pt}`,d:mt,"fill-rule":"evenodd"}),Nt("path",{class:"hatching",d:mt,"fill-rule":"evenodd",fill:`url(#${c}-${pt})`}),Nt("path",{class:`outline ${pt}`,d:mt}))}if(I!==null&&e.collapse!==null&&O.get(G)){let it=`${c}-melt`;_.querySelector("defs").append(Nt("clipPath",{id:it},Nt("path",{d:O.get(G).map(Ft=>pd(Ft,y,A)).join(""),"clip-rule":"evenodd"})));let[pt,mt]=[A(0),A(-e.collapse*M)];N.append(Nt("rect",{class:"melt","clip-path":`url(#${it})`,x:ft(y(-I*1.6)),width:ft(I*3.2*f),y:ft(Math.min(pt,mt)),height:ft(Math.abs(mt-pt))}))}if(V!==null&&O.get(1)){let it=O.get(1).map(pt=>pd(pt,y,mt=>A(mt-V))).join("");N.append(Nt("path",{class:"moved",d:it}))}O.size?i.sections?.isNeighbour(s)&&_.append(Nt("text",{class:"empty",x:o/2,y:a-11,"text-anchor":"middle"},"outline of the next station; values of this one")):_.append(Nt("text",{class:"empty",x:o/2,y:a-40,"text-anchor":"middle"},i.sections?"No section was kept at this station.":"The document carries no section outlines."));let B=new gd(_,r,e.bands,R,c,l,t,n,s,o),lt=A(Math.max(E("cover_thickness")??0,0)+(E("gap")??0)*(M>0?1:0)),Z=h.y-8,K=h.y-44;if(I!==null){B.across(y(-I),y(I),K,A(0),"rib_width","rib width");let it=E("clamp_land");if(it!==null){let pt=Ng(n);pt?B.across(y(pt*(I+e.margin)),y(pt*(I+e.margin+it)),Z,lt,"clamp_land","land",pt):B.note(o-u.right+16,Z,"clamp_land","clamp land","start",null)}}let tt=h.x-12,ut=h.x+h.w+12,ct=new Yc(h.y-10),j=new Yc(h.y-10),gt=E("gap")??0;M>0?B.along(A(gt+(E("cover_thickness")??0)),A(gt),ut,"cover_thickness","cover","start",j,y(I??0)):B.along(A(E("cover_thickness")??0),A(0),ut,"cover_thickness","cover","start",j,y(I??0)),B.leader(tt,A(0)-30,y(I===null?0:-I*.7),A(gt/2*M),"gap","gap","end",ct);for(let{side:it,name:pt,columns:mt}of H){let Ft=it<0?ct:j,Wt=it<0?tt:ut,Vt=it<0?"end":"start",le=E(`rib_height_${pt}`),ce=y(I===null?0:it*I);B.along(A(0),A(le===null?0:-le*M),Wt,`rib_height_${pt}`,"rib height",Vt,Ft,ce);let Kt=mt[Math.floor(mt.length/2)],Ce=Kt?[y(Kt.u),A((Kt.low+Kt.high)/2*M+D)]:[y(it*(I??.5)*2),A(-.5*M)];B.leader(Wt,Ce[1]+36,Ce[0],Ce[1],`trap_area_${pt}`,"trap, collapsed",Vt,Ft);let Te=mt[mt.length-1],qe=Te?[y(Te.u),A(Te.high*M+D)]:Ce;i.compact||B.leader(Wt,qe[1]+60,qe[0],qe[1],`lip_gap_${pt}`,"lip gap",Vt,Ft)}return _.append(...uw(h.x+4,a-16,f)),_.append(Nt("text",{class:"side",x:12,y:ft(a-11)},"◂ inner"),Nt("text",{class:"side",x:ft(o-12),y:ft(a-11),"text-anchor":"end"},"outer ▸")),_}function hw(i,t,e,n,s,r,o,a){let c=(i("cover_thickness")??0)+(e>0?Math.max(i("gap")??0,0):0),l=i("light_lean"),u=i("light_enters_inner"),h=i("light_enters_outer"),d=l!==null&&u!==null&&h!==null,[f,g]=d?[u-n.margin,h+n.margin]:[-t-n.margin,t+n.margin],v=s(1)-s(0),p=(r(c)-o)/v,m=O=>Math.tan(O*Math.PI/180)*p,[y,A]=d?[f+m(l-n.cone),g+m(l+n.cone)]:[f,g],M=t+n.margin,R=[[y,null],[f,c],[-M,0],[M,0],[g,c],[A,null]],E=(O,N)=>`${ft(s(O))} ${ft(N===null?o:r(N))}`,_=[Nt("path",{class:"light",d:`M${R.map(([O,N])=>E(O,N)).join("L")}Z`})],T=Math.max(1,Math.min(4,Math.round(2*M*v/26)));for(let O=0;O<T;O++){let N=(O+.5)/T,I=(Y,B)=>Y+N*(B-Y),V=I(-M,M),G=I(f,g),D=6/v,H=c>0?V+(G-V)*D/c:V;_.push(Nt("path",{class:"ray","marker-end":`url(#${a}-arrow)`,d:`M${ft(s(I(y,A)))} ${ft(o+2)}L${E(G,c)}L${E(H,D)}`}))}return _}var Lg=i=>i===0?1:i===1?2:0;function pd(i,t,e){return"M"+i.map(([n,s])=>`${ft(t(n))} ${ft(e(s))}`).join("L")+(_a(i)?"Z":"")}function md(i,t,e,n,s){let r=i.map(a=>`${ft(n(a.u))} ${ft(s(t(a)))}`),o=[...i].reverse().map(a=>`${ft(n(a.u))} ${ft(s(e(a)))}`);return`M${[...r,...o].join("L")}Z`}function qc(i,t,e,n){return Nt("pattern",{id:i,width:e,height:e,patternUnits:"userSpaceOnUse",patternTransform:`rotate(${n})`},Nt("line",{class:t,x1:0,y1:0,x2:0,y2:e}))}function uw(i,t,e){let n=e*4>140?1:e*4>40?2:5,s=[];for(let r=0;r<4;r++)s.push(Nt("rect",{class:r%2?"scale-light":"scale-dark",x:ft(i+r*n*e/4),y:t,width:ft(n*e/4),height:4}));return s.push(Nt("text",{class:"side",x:ft(i+n*e+6),y:t+5},`${n} mm`)),s}var Yc=class{constructor(t){this.free=t}free;take(t,e){let n=Math.max(t,this.free);return this.free=n+e,n}},gd=class{constructor(t,e,n,s,r,o,a,c,l,u){this.root=t;this.words=e;this.bands=n;this.broken=s;this.key=r;this.s=o;this.joint=a;this.contour=c;this.station=l;this.width=u}root;words;bands;broken;key;s;joint;contour;station;width;value(t){return Ug(this.contour,t,this.station)}state(t){let e=t.startsWith("rib_height")?"rib_height":t.startsWith("trap_area")?"trap_room":t;return this.broken.get(t)??this.broken.get(e)??(t.startsWith("trap_area")?this.broken.get(t.replace("area","room")):null)??null}limit(t){return this.bands.find(e=>e.columns.includes(t)&&e.words)?.words??""}label(t,e,n,s,r){let o=this.state(n),a=this.value(n),c=Nt("g",{class:`dim-label ${o?o.waived?"waived":o.severity:""}`,"data-column":n}),l=o?`${yr[o.severity]} `:"",u=a===null?"not measured":this.words.value(a,n),d=(a===null?this.words.reason(this.joint.id,this.contour.id,n,this.s):"")||this.limit(n),f=[["dim-title",s],["dim-value",r==="end"&&o?`${u} ${yr[o.severity]}`:l+u]],g=Math.floor(((r==="end"?t:this.width-t)-2)/5.1);return d&&f.push(["dim-limit",d.length>g?`${d.slice(0,g-1)}…`:d]),f.forEach(([v,p],m)=>{let y=Nt("text",{class:v,x:ft(t),y:ft(e+m*13),"text-anchor":r},p);v==="dim-limit"&&d!==p&&y.append(Nt("title",null,d)),c.append(y)}),c}line(t,e,n,s){let r=Math.hypot(n-t,s-e)>=22,o=`url(#${this.key}-arrow)`;if(r){this.root.append(Nt("path",{class:"dim",d:`M${ft(t)} ${ft(e)}L${ft(n)} ${ft(s)}`,"marker-start":o,"marker-end":o}));return}let a=Math.hypot(n-t,s-e)||1,[c,l]=a>.01&&(n!==t||s!==e)?[(n-t)/a,(s-e)/a]:[0,1];this.root.append(Nt("path",{class:"dim",d:`M${ft(t-c*16)} ${ft(e-l*16)}L${ft(t)} ${ft(e)}`,"marker-end":o}),Nt("path",{class:"dim",d:`M${ft(n+c*16)} ${ft(s+l*16)}L${ft(n)} ${ft(s)}`,"marker-end":o}))}across(t,e,n,s,r,o,a=0){let[c,l]=[Math.min(t,e),Math.max(t,e)];for(let y of[c,l])this.root.append(Nt("path",{class:"extension",d:`M${ft(y)} ${ft(s)}V${ft(n-4)}`}));this.line(c,n,l,n);let u=this.value(r),h=this.state(r),d=this.limit(r),f=Nt("g",{class:`dim-label ${h?h.waived?"waived":h.severity:""}`,"data-column":r}),g=n-6,v=a===0?(c+l)/2:a>0?c+4:l-4,p=a===0?"middle":a>0?"start":"end",m=h?`${yr[h.severity]} `:"";f.append(Nt("text",{class:"dim-value",x:ft(v),y:ft(g),"text-anchor":p},Nt("tspan",{class:"dim-title"},`${o}  `),Nt("tspan",{class:"dim-value"},m+this.words.value(u,r)))),d&&f.append(Nt("text",{class:"dim-limit",x:ft(v),y:ft(g-13),"text-anchor":p},d)),this.root.append(f)}along(t,e,n,s,r,o,a,c){let l=o==="start"?1:-1,u=this.limit(s)||this.value(s)===null?3:2,h=(t+e)/2-u*13/2+10,d=a.take(h,u*13+8);if(this.value(s)!==null){for(let f of[t,e])this.root.append(Nt("path",{class:"extension",d:`M${ft(c)} ${ft(f)}H${ft(n+l*4)}`}));this.line(n,t,n,e)}this.root.append(this.label(n+l*10,d,s,r,o))}leader(t,e,n,s,r,o,a,c){let l=a==="start"?1:-1,u=this.limit(r)||this.value(r)===null?3:2,h=c.take(e,u*13+8),d=t+l*4;this.root.append(Nt("path",{class:"leader",d:`M${ft(d+l*4)} ${ft(h-3)}H${ft(d-l*6)}L${ft(n)} ${ft(s)}`}),Nt("circle",{class:"leader-dot",cx:ft(n),cy:ft(s),r:2}),this.label(t+l*10,h,r,o,a))}note(t,e,n,s,r,o){this.root.append(this.label(t,e,n,s,r))}};var dw=0,_d=new WeakMap,xa=class{constructor(t,e,n=!1){this.host=t;this.atlas=e;this.compact=n;new ResizeObserver(()=>{let s=t.getBoundingClientRect();Math.abs(s.width-this.size.width)<1&&Math.abs(s.height-this.size.height)<1||(this.size={width:s.width,height:s.height},this.place&&this.show(this.place))}).observe(t)}host;atlas;compact;key=`sec${dw++}`;place=null;size={width:0,height:0};show(t){if(this.place=t,!this.size.width){let r=this.host.getBoundingClientRect();this.size={width:r.width,height:r.height}}let e=Math.max(320,this.size.width),n=Math.max(280,this.size.height),s=xd(this.atlas,t,e,n,this.key,this.compact);hn(this.host),this.host.append(s)}};function xd(i,t,e,n,s,r){let o=i.payload.joints[t.joint],a=o.contours[t.contour],c=i.sectionsOf(o.id,a.id);return _d.has(a)||_d.set(a,Dg(o,a,i.payload.facts[t.joint].margin)),Fg({joint:o,facts:i.payload.facts[t.joint],contour:a,station:t.station,sections:c,findings:i.payload.findings,words:i.words,frame:_d.get(a),width:e,height:n,compact:r,key:s})}function yd(i,t){let e=i.payload.joints[t.joint],n=e.contours[t.contour],{s,x:r,y:o,z:a}=n.stations,c=t.station;return $t("span",null,$t("b",{"data-s":s[c]},`s = ${s[c].toFixed(2)} mm`),` · station ${c+1} of ${s.length}`,e.contours.length>1?` of path ${n.id}`:"",` · x ${r[c].toFixed(2)}  y ${o[c].toFixed(2)}  z ${a[c].toFixed(2)} mm`)}var fw=["not measured","within","close to the limit","limit broken","broken, waived","to be looked at","noted"],Bg=[[6.5,1.5],[5.5,3],[4,6],[0,14],[1.5,11],[2,10],[4.5,5]],Jc=1e3,Kc=class{constructor(t,e,n){this.host=t;this.atlas=e;this.walk=n;let s=r=>{let o=this.trackBox();if(!o)return;let a=Math.max(0,Math.min(1,(r.clientX-o.left)/o.width));this.walk.go(this.walk.at(a*this.walk.stretches().length),"strip")};t.addEventListener("pointerdown",r=>{!r.target.closest(".track")||r.target.closest("button")||(t.setPointerCapture(r.pointerId),s(r))}),t.addEventListener("pointermove",r=>{r.buttons&&t.hasPointerCapture(r.pointerId)&&s(r)}),new ResizeObserver(()=>this.moveCursor()).observe(t)}host;atlas;walk;values=[];cursor=$t("div",{class:"strip-cursor","aria-hidden":!0});shownJoint=-1;board=null;trackBox(){return this.host.querySelector(".track")?.getBoundingClientRect()??null}build(){this.shownJoint=this.walk.place.joint,hn(this.host),this.values=[];let{stretches:t,length:e}=this.walk.stretches(),{joint:n,facts:s}=this.walk,r=f=>f/e*Jc,o=$t("div",{class:"strip-board"});this.board=o;let a=Nt("svg",{class:"ruler",viewBox:`0 0 ${Jc} 30`,preserveAspectRatio:"none","aria-hidden":!0}),c=$t("div",{class:"ruler-numbers","aria-hidden":!0}),l=pw(e/8);for(let{start:f,length:g,contour:v}of t){a.append(Nt("line",{class:"ruler-line",x1:r(f),x2:r(f+g),y1:29,y2:29}));for(let p=0;p<=g+1e-6;p+=l/5){let m=Math.abs(p/l-Math.round(p/l))<1e-6;a.append(Nt("line",{class:"ruler-line",x1:ft(r(f+p)),x2:ft(r(f+p)),y1:m?20:25,y2:29})),m&&g-p>Math.max(l*.45,e*.075)&&c.append($c($t("span",null,`${Math.round(p)}`),r(f+p)))}e>0&&g>l&&c.append($c($t("span",{class:"end"},g.toFixed(1)),r(f+g))),t.length>1&&c.append($c($t("b",null,n.contours[v].id),r(f+g/2))),this.turns(a,v,f,r)}o.append($t("div",{class:"strip-head"},"unrolled seam, mm"),$t("div",{class:"track ruler-track"},a,c,this.marks(r)),$t("div",{class:"strip-head end"},"here · limit"));let u=f=>s.bands[f].severity==="must-fix"||this.atlas.payload.findings.some(g=>g.rule===s.bands[f].rule&&g.joint===n.id&&g.severity!=="note"),h=s.bands.map((f,g)=>g).sort((f,g)=>+!u(f)-+!u(g));for(let f of h){let g=s.bands[f],v=u(f)?"":" more",p=Nt("svg",{viewBox:`0 0 ${Jc} 14`,preserveAspectRatio:"none",role:"img","aria-label":this.spoken(f)});for(let{contour:y,start:A}of t){let M=n.contours[y],R=s.tracks[M.id]?.[f]??[];for(let[E,_,T]of R){let O=r(A+Zc(M.stations.s,E,0,M.length_mm)),N=r(A+Zc(M.stations.s,_,1,M.length_mm)),I=T>1?Math.max(3,N-O):N-O;p.append(Nt("rect",{class:`cell ${Xa[T]}`,x:ft(O),y:Bg[T][0],width:ft(I),height:Bg[T][1]}))}}let m=$t("div",{class:`strip-value${v}`,"data-rule":g.rule});this.values[f]=m,o.append($t("div",{class:`strip-label${v}`,title:g.title},g.title),$t("div",{class:`track${v}`},p),m)}let d=h.filter(f=>!u(f)).length;if(this.host.append(o,this.cursor),document.documentElement.style.setProperty("--strip",`${Math.ceil(o.getBoundingClientRect().height)+(d?38:18)}px`),d){let f=$t("button",{type:"button",class:"strip-more screen","aria-expanded":!1},`${d} further rules`);f.addEventListener("click",()=>{let g=o.classList.toggle("open");f.setAttribute("aria-expanded",String(g)),f.textContent=g?"fewer rules":`${d} further rules`,this.moveCursor()}),this.host.append(f)}}turns(t,e,n,s){let{stations:r,length_mm:o}=this.walk.joint.contours[e],a=r.turn_radius;if(a)for(let c=0;c<a.length;c++){if(a[c]===null||a[c]>60)continue;let l=c;for(;l+1<a.length&&a[l+1]!==null&&a[l+1]<=60;)l++;let[u,h]=[Zc(r.s,c,0,o),Zc(r.s,l,1,o)];t.append(Nt("rect",{class:"turn",x:ft(s(n+u)),width:ft(s(h)-s(u)),y:20,height:9})),c=l}}marks(t){let e=this.atlas.payload.findings,n=$t("div",{class:"strip-marks"}),{stretches:s}=this.walk.stretches(),r=[];for(let o of e){if(o.joint!==this.walk.joint.id||o.station===null||o.severity==="note")continue;let a=this.walk.joint.contours.findIndex(u=>u.id===o.contour),c=t(s[a].start+this.walk.joint.contours[a].stations.s[o.station]),l=r.find(u=>Math.abs(u.x-c)<12);l?l.findings.push(o):r.push({x:c,findings:[o]})}for(let{x:o,findings:a}of r){let c=a[0],l=$t("button",{type:"button",class:`strip-mark ${c.waived?"waived":c.severity}`,"data-finding":c.n,"aria-label":`Go to finding ${a.map(u=>u.n).join(", ")}: ${c.title}`},Ms(a));l.addEventListener("click",()=>this.walk.showFinding(c)),n.append($c(l,o))}return n}spoken(t){let{joint:e,facts:n}=this.walk,s=[];for(let o of e.contours)for(let[a,c,l]of n.tracks[o.id]?.[t]??[])l!==1&&s.push(`${fw[l]} from ${o.stations.s[a].toFixed(1)} to ${o.stations.s[c].toFixed(1)} mm`);let r=n.bands[t];return`${r.title}, ${r.words}: ${s.length?s.slice(0,6).join("; "):"within everywhere"}`}show(t){t.joint!==this.shownJoint&&this.build();let{contour:e,facts:n,s,joint:r}=this.walk,o=this.atlas.words;n.bands.forEach((a,c)=>{let l=this.atlas.payload.findings.find(f=>f.rule===a.rule&&f.joint===r.id&&f.contour===e.id&&ga(f,s)),u=this.values[c];hn(u);for(let f of["must-fix","attention","note","waived"])u.classList.remove(f);l&&u.classList.add(l.waived?"waived":l.severity);let h=$t("span",{class:"values"},l?`${yr[l.severity]} `:"");a.columns.filter(f=>Array.isArray(e.stations[f])).map(f=>{let g=e.stations[f][t.station]??null,v=g===null?o.reason(r.id,e.id,f,s):"",p=g===null?"–":a.columns.length>1&&o.unit(f)?o.bare(g,f):o.value(g,f);return $t("b",{"data-column":f,"data-value":String(g),title:v||o.title(f)},p)}).forEach((f,g)=>h.append(g?" / ":"",f)),u.append(h,$t("span",{class:"limit",title:a.words},a.words))}),this.moveCursor()}moveCursor(){let t=this.trackBox();if(!t||!this.board)return;let e=this.host.getBoundingClientRect(),n=this.walk.unrolled/this.walk.stretches().length;this.cursor.style.transform=`translateX(${ft(t.left-e.left+n*t.width)}px)`,this.cursor.style.height=`${ft(this.board.getBoundingClientRect().height)}px`,this.cursor.dataset.share=n.toFixed(5)}};function $c(i,t){return i.style.left=`${t/Jc*100}%`,i}function Zc(i,t,e,n){return e===0?t===0?0:(i[t-1]+i[t])/2:t===i.length-1?Math.max(n,i[t]):(i[t]+i[t+1])/2}function pw(i){let t=10**Math.floor(Math.log10(i));return[1,2,5,10].map(e=>e*t).find(e=>e>=i*.75)??10*t}var jc=class{constructor(t){this.walk=t;this.slider.addEventListener("input",()=>{this.walk.go(this.walk.at(Number(this.slider.value)),"slider")});let e=(n,s)=>Be(n)?.addEventListener("click",s);e("walk-back",()=>this.walk.step(-1)),e("walk-on",()=>this.walk.step(1)),e("finding-back",()=>{let n=this.walk.neighbourFinding(-1);n&&this.walk.showFinding(n)}),e("finding-on",()=>{let n=this.walk.neighbourFinding(1);n&&this.walk.showFinding(n)}),this.slider.addEventListener("keydown",n=>{Qc(n,this.walk)&&n.preventDefault()})}walk;slider=Be("walk-slider");where=Be("walk-where");show(t){let{length:e}=this.walk.stretches();this.slider.max=String(e),this.slider.step="any",this.slider.value=String(this.walk.unrolled);let n=this.walk.findingsHere(),r=`s = ${this.walk.s.toFixed(2)} mm`;this.slider.setAttribute("aria-valuetext",r+(n.length?`, finding ${n.map(l=>`${l.n} ${l.title}`).join(", ")}`:"")),hn(this.where);let o=this.walk.contour;this.where.append($t("b",{"data-station":t.station},r),$t("span",null,`${t.station+1} / ${o.stations.s.length}${this.walk.joint.contours.length>1?` · ${o.id}`:""}`));let a=Be("walk-live"),c=n.map(l=>`Finding ${l.n}: ${l.title}`).join(". ");a&&a.textContent!==c&&(a.textContent=c)}};function Qc(i,t){if(i.altKey||i.ctrlKey||i.metaKey)return!1;let e=i.shiftKey?10:1;switch(i.key){case"ArrowRight":case"ArrowUp":return t.step(e),!0;case"ArrowLeft":case"ArrowDown":return t.step(-e),!0;case"Home":return t.go({station:0},"keys"),!0;case"End":return t.go({station:t.contour.stations.s.length-1},"keys"),!0;case"PageDown":case"PageUp":{let n=t.neighbourFinding(i.key==="PageDown"?1:-1);return n&&t.showFinding(n,"keys"),!0}}return!1}async function mw(){let i=Be("seamcheck-data");if(Vg(()=>{}),!i)return;let t=await Vd(i);if(document.documentElement.classList.add("alive"),!t.joints.length||!t.joints.some(v=>v.contours.length)){document.documentElement.dataset.ready="yes";return}let e=new Ea(t),n=new Xc(t),s=new xa(Be("section-figure"),e),r=new xa(Be("section-beside"),e,!0),o=new qa(Be("plan-figure"),e,n),a=new Kc(Be("strip"),e,n),c=new jc(n),l=new Ga(Be("charts-judged"),Be("charts-further"),e,n),u=new vd(e,n),h=!1;To(Be("section-beside"),()=>{h=!0,r.show(n.place)}),n.listen((v,p)=>{s.show(v),h&&r.show(v),o.show(v),a.show(v),c.show(v),l.show(v),u.show(v,p==="finding"||p==="keys-finding");for(let m of["section-caption","beside-caption"]){let y=Be(m);hn(y),y.append(yd(e,v))}gw(e,n),_w(n)});for(let v of["section-figure","plan-figure","strip","section-beside"])Be(v).addEventListener("keydown",p=>{Qc(p,n)&&p.preventDefault()});for(let v of document.querySelectorAll("[data-go]"))v.addEventListener("click",p=>{let m=t.findings.find(y=>String(y.n)===v.dataset.go);m&&m.station!==null&&(p.preventDefault(),n.showFinding(m),v.dataset.top!==void 0&&Be("desk").scrollIntoView({block:"start"}))});for(let v of document.querySelectorAll("[data-place]"))v.addEventListener("click",p=>{let[m,y,A]=v.dataset.place.split(" "),M=t.joints.findIndex(E=>E.id===m),R=t.joints[M]?.contours.findIndex(E=>E.id===y)??-1;R<0||(p.preventDefault(),n.go({joint:M,contour:R,station:Number(A)},"finding"))});let d=Be("joint-choice");d?.addEventListener("change",()=>n.go({joint:Number(d.value),contour:0,station:0},"joint")),n.listen(v=>{d&&(d.value=String(v.joint))});let f=xw(e);Vg(()=>{o.draw(),l.retheme(),u.retheme()}),addEventListener("beforeprint",()=>{document.documentElement.dataset.print="yes";for(let v of f)v.forPrint();o.draw({width:690,height:268}),l.forPrint(256)}),addEventListener("afterprint",()=>{delete document.documentElement.dataset.print;for(let v of f)v.forScreen();o.draw(),l.forScreen()}),await document.fonts.ready;let g=t.findings.find(v=>v.station!==null&&v.severity!=="note");g?n.showFinding(g,"start"):n.go({joint:0,contour:0,station:0},"start"),document.documentElement.dataset.ready="yes"}var vd=class{constructor(t,e){this.atlas=t;this.walk=e;let n=[...document.querySelectorAll("[data-pane]")],s=r=>{for(let o of n)o.setAttribute("aria-selected",String(o.dataset.pane===r));for(let o of n)o.tabIndex=o.dataset.pane===r?0:-1;Be("pane-plan").hidden=r!=="plan",Be("pane-space").hidden=r!=="space",r==="space"&&this.open()};for(let r of n)r.addEventListener("click",()=>s(r.dataset.pane)),r.addEventListener("keydown",o=>{if(o.key!=="ArrowLeft"&&o.key!=="ArrowRight")return;let a=n[(n.indexOf(r)+1)%n.length];s(a.dataset.pane),a.focus()})}atlas;walk;scene=null;open(){if(this.scene)return;let t=Be("space-figure");this.atlas.meshes.length||t.append($t("p",{class:"empty"},"The document carries no meshes of the parts; the seam is shown alone."));try{this.scene=new Wc(t,this.atlas,this.walk)}catch{hn(t),t.append($t("p",{class:"empty"},"This browser offers no 3-D drawing (WebGL). The plan and the sections show the same places."));return}this.tools(this.scene),t.addEventListener("keydown",e=>{e.key.startsWith("Page")&&Qc(e,this.walk)&&e.preventDefault()})}tools(t){let e=Be("space-tools"),n=this.atlas.meshes.reduce((o,a)=>o+a.leftOut,0);n&&(Be("space-note").textContent=`${n} small faces are left out of this picture; all were measured.`);let s=(o,a)=>{let c=$t("button",{type:"button"},o);return c.addEventListener("click",a),c},r=(o,a,c)=>{let l=$t("input",{type:"checkbox"});return l.checked=a,l.addEventListener("change",()=>c(l.checked)),$t("label",null,l,` ${o}`)};Eo(e,[s("Along the light",()=>t.alongLight()),s("Aslant",()=>t.aslant()),s("To the section",()=>t.flyToMarker()),r("cut open here",!1,o=>t.setCut(o)),...t.partIds.slice(0,12).map(o=>r(this.atlas.words.part(o),!0,a=>t.setVisible(o,a)))]),t.partIds.length>12&&Eo(e,[r(`${t.partIds.length-12} further parts`,!0,o=>t.partIds.slice(12).forEach(a=>t.setVisible(a,o)))])}show(t,e){this.scene?.show(t,e)}retheme(){this.scene?.retheme()}};function gw(i,t){let e=Be("all-values");if(!e)return;let{contour:n,joint:s,place:r,s:o}=t,a=Object.keys(i.payload.quantities).filter(c=>Array.isArray(n.stations[c])).map(c=>{let l=n.stations[c][r.station],u=l===null?i.words.reason(s.id,n.id,c,o):"";return $t("tr",null,$t("th",{scope:"row"},i.words.title(c)),$t("td",{"data-column":c,"data-value":String(l)},i.words.value(l,c)),$t("td",null,u))});hn(e),e.append(...a)}function _w(i){let t=new Set(i.findingsHere().map(e=>String(e.n)));for(let e of document.querySelectorAll("#finding-list [data-row]"))t.has(e.dataset.row)?e.setAttribute("aria-current","true"):e.removeAttribute("aria-current")}function xw(i){return[...document.querySelectorAll("[data-sheet]")].flatMap(t=>{let e=i.payload.findings.find(l=>String(l.n)===t.dataset.sheet);if(e.station===null)return[];let n=i.payload.joints.findIndex(l=>l.id===e.joint),s=i.payload.joints[n].contours.findIndex(l=>l.id===e.contour),r={joint:n,contour:s,station:e.station},o=(l,u)=>{hn(t),t.append(xd(i,r,l,u,`sheet${e.n}`,!0),$t("figcaption",null,yd(i,r)))},a=()=>o(Math.max(340,Math.min(760,t.getBoundingClientRect().width||660)),400),c=To(t,a);return[{draw:c,forPrint:()=>{c(),o(450,330)},forScreen:a}]})}var kg=!1,zg=[];function Vg(i){if(zg.push(i),kg)return;kg=!0;let t=document.documentElement,e=()=>{for(let n of zg)n()};Be("theme-switch")?.addEventListener("click",()=>{let n=t.dataset.theme?t.dataset.theme==="dark":matchMedia("(prefers-color-scheme: dark)").matches;t.dataset.theme=n?"light":"dark",e()}),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",e)}mw().catch(i=>{console.error(i);let t=Be("trouble");t&&(t.hidden=!1,t.textContent=`The figures could not be drawn: ${i instanceof Error?i.message:String(i)}. All texts and tables below are complete.`)});})();
